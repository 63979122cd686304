package yardlight.escalation.trend;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class FastestFallsTest {

    private static final Instant START = Instant.parse("2026-11-02T06:00:00Z");

    @Test
    void a_fall_is_remembered_although_the_pressure_is_read_each_minute_ever_after() {
        FastestFalls falls = FastestFalls.NONE.plus(START, 90);
        Instant now = START;
        for (int minute = 1; minute <= 24 * 60; minute++) {
            now = START.plus(Duration.ofMinutes(minute));
            falls = falls.plus(now, minute % 7);
        }

        assertThat(falls.largestBefore(now)).isEqualTo(90);
        assertThat(falls.falls()).hasSizeLessThanOrEqualTo(FastestFalls.KEPT);
    }

    @Test
    void a_fall_that_goes_on_is_one_and_no_measure_of_itself() {
        FastestFalls falls = FastestFalls.NONE;
        for (int minute = 0; minute < 50; minute++) {
            falls = falls.plus(START.plus(Duration.ofMinutes(minute)), minute);
        }

        assertThat(falls.falls()).hasSize(1);
        assertThat(falls.largestBefore(START.plus(Duration.ofMinutes(50)))).isZero();
        assertThat(falls.largestBefore(START.plus(Duration.ofMinutes(110)))).isEqualTo(49);
    }
}
