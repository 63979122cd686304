package yardlight.escalation.limit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StillnessTest {

    private final Watched point = new Watched(new Rules(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Duration.ofHours(6)),
            Optional.empty(),
            Optional.empty()));

    private void hours(double first, double last, double value) {
        for (double hour = first; hour <= last; hour += 0.5) {
            point.read(Duration.ofMinutes((long) (hour * 60)), value);
        }
    }

    @Test
    void a_value_is_stuck_after_its_time_and_until_it_changes() {
        hours(0, 5.5, 12.4);
        assertThat(point.turned()).isEmpty();
        hours(6, 6, 12.4);
        assertThat(point.turned()).containsExactly("+stuck");
        hours(6.5, 20, 12.4);
        hours(20.5, 20.5, 12.5);
        assertThat(point.turned()).containsExactly("+stuck", "-stuck");
    }

    @Test
    void the_least_change_is_one() {
        for (int i = 0; i < 40; i++) {
            hours(i / 2.0, i / 2.0, 12.4 + i % 5 * 1e-9);
        }

        assertThat(point.turned()).isEmpty();
    }

    @Test
    void a_gap_may_have_had_changes_in_it() {
        hours(0, 4, 12.4);
        hours(8, 13.5, 12.4);
        assertThat(point.turned()).isEmpty();
        hours(14, 14, 12.4);
        assertThat(point.turned()).containsExactly("+stuck");
    }

    @Test
    void once_it_is_stuck_a_gap_does_not_free_it() {
        hours(0, 6, 12.4);
        hours(12, 12, 12.4);

        assertThat(point.turned()).containsExactly("+stuck");
    }
}
