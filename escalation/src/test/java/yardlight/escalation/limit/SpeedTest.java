package yardlight.escalation.limit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SpeedTest {

    private static Watched watching(String rise, String fall) {
        var change = new Change(
                Optional.of(new BigDecimal(rise)), Optional.of(new BigDecimal(fall)), Duration.ofMinutes(10));
        return new Watched(new Rules(
                Optional.empty(),
                Optional.of(change),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    @Test
    void a_rise_counts_within_its_span_only() {
        Watched slow = watching("2", "5");
        for (int i = 0; i < 60; i++) {
            slow.minutes(i, i * 0.2);
        }
        assertThat(slow.turned()).isEmpty();

        Watched fast = watching("2", "5");
        for (int i = 0; i < 60; i++) {
            fast.minutes(i, i * 0.21);
        }
        assertThat(fast.turned()).containsExactly("+rising-fast");
    }

    @Test
    void it_is_over_once_the_span_has_passed() {
        Watched point = watching("2", "5");

        point.minutes(0, 10, 10, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13);
        assertThat(point.turned()).containsExactly("+rising-fast");
        point.minutes(12, 13, 13);
        assertThat(point.turned()).containsExactly("+rising-fast", "-rising-fast");
    }

    @Test
    void a_fall_is_measured_from_the_highest_value() {
        Watched point = watching("20", "5");

        point.minutes(0, 60, 64, 60, 58.9);

        assertThat(point.turned()).containsExactly("+falling-fast");
        assertThat(point.findings().get(0).value()).contains(new BigDecimal("5.1"));
        assertThat(point.findings().get(0).limit()).contains(new BigDecimal("5"));
    }

    @Test
    void a_gap_in_the_readings_says_nothing_of_speed() {
        Watched point = watching("2", "5");

        point.minutes(0, 10).minutes(11, 19);

        assertThat(point.turned()).isEmpty();
    }

    @Test
    void what_is_remembered_stays_small() {
        Watched point = watching("2", "5");

        for (int i = 0; i < 5_000; i++) {
            point.read(Duration.ofSeconds(i), Math.sin(i));
        }

        assertThat(point.gauge().noted(Speed.NAME)).hasSizeLessThanOrEqualTo(52);
    }
}
