package yardlight.demo.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is measured is what users are told to do. */
class InstalledTest {

    private final String manual = Files.readString(Path.of("../docs/operating.md"));

    InstalledTest() throws IOException {}

    @Test
    void the_options_of_the_manual_are_the_ones_that_are_measured() {
        String unit = manual.substring(
                manual.indexOf("ExecStart="), manual.indexOf(" -jar yardlight.jar --yardlight.home=/var"));
        List<String> options = Stream.of(unit.split("\\s+"))
                .filter(word -> word.startsWith("-X"))
                .filter(word -> !word.startsWith("-XX:SharedArchiveFile"))
                .toList();

        assertThat(options).containsExactlyInAnyOrderElementsOf(Launch.INSTALLED);
    }

    @Test
    void so_is_the_environment() {
        Launch.INSTALLED_ENVIRONMENT.forEach(
                (name, value) -> assertThat(manual).contains("Environment=" + name + "=" + value));
    }
}
