package yardlight.demo.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class BenchSettingsTest {

    @Test
    void have_usual_values() {
        BenchSettings usual = BenchSettings.from("--demo.bench");

        assertThat(usual.connections()).containsExactly(32, 128);
        assertThat(usual.rounds()).isEqualTo(3);
        assertThat(usual.flood()).isZero();
        assertThat(usual.gatewayJar()).isEmpty();
    }

    @Test
    void are_what_the_command_line_says() {
        BenchSettings quick = BenchSettings.from(
                "--demo.bench",
                "--demo.bench.warm-up=PT1S",
                "--demo.bench.connections=4",
                "--demo.bench.only=delivery,scale",
                "--demo.bench.gateway-jar=other.jar");

        assertThat(quick.warmUp()).isEqualTo(Duration.ofSeconds(1));
        assertThat(quick.connections()).containsExactly(4);
        assertThat(quick.only()).containsExactly("delivery", "scale");
        assertThat(quick.gatewayJar()).isEqualTo("other.jar");
    }
}
