package yardlight.gateway.health;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.health.contributor.Status;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

@ExtendWith(OutputCaptureExtension.class)
class SpaceHealthTest {

    private final AtomicLong free = new AtomicLong(SpaceHealth.LITTLE);
    private final SpaceHealth health = new SpaceHealth(free::get);

    @Test
    void warns_once_each_time_that_little_is_left_and_stays_up(CapturedOutput output) {
        assertThat(health.health().getDetails())
                .containsEntry("free", "500 MiB")
                .doesNotContainKey("warning");

        free.set(SpaceHealth.LITTLE - 1);
        health.health();

        assertThat(health.health().getStatus()).isEqualTo(Status.UP);
        assertThat(health.health().getDetails()).containsEntry("warning", "make room soon");
        assertThat(output.getAll().split("only 499 MiB are free", -1)).hasSize(2);
    }
}
