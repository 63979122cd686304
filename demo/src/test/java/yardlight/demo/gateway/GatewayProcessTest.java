package yardlight.demo.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GatewayProcessTest {

    @TempDir
    private Path folder;

    @Test
    void that_dies_is_told_with_its_last_lines() {
        Path missing = folder.resolve("missing.jar");

        try (GatewayProcess process = GatewayProcess.start(launch(missing))) {
            assertThatThrownBy(() -> process.awaitReady(Duration.ofSeconds(30)))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("the gateway ended with code 1")
                    .hasMessageContaining("missing.jar");
            assertThat(process.alive()).isFalse();
        }
    }

    @Test
    void is_started_on_the_loopback_interface_with_its_properties() {
        assertThat(launch(Path.of("yardlight.jar")).command())
                .containsSubsequence("-Xmx128m", "-jar", "yardlight.jar", "--server.port=1234")
                .contains("--server.address=127.0.0.1", "--yardlight.home=" + folder);
    }

    private Launch launch(Path jar) {
        return new Launch(jar, folder, List.of("-Xmx128m"), 1234, Map.of("yardlight.home", folder.toString()));
    }
}
