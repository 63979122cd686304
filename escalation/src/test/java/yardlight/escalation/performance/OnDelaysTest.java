package yardlight.escalation.performance;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;

class OnDelaysTest {

    private static final Instant ZERO = Instant.parse("2026-11-01T00:00:00Z");

    private static PastAlarm alarm(long at, long seconds) {
        Instant began = ZERO.plusSeconds(at);
        Optional<Instant> over = Optional.of(seconds).filter(any -> seconds > 0).map(began::plusSeconds);
        return new PastAlarm(
                Fixtures.TANK, Priority.HIGH, true, began, began, over, Optional.of(began.plusSeconds(1)), List.of());
    }

    /** The advice of the month: 240 occurrences, of which 212 were over within 20 s. */
    @Test
    void twenty_seconds_remove_what_is_over_by_then_and_nothing_else() {
        var alarms = new ArrayList<PastAlarm>();
        for (int i = 0; i < 240; i++) {
            alarms.add(alarm(i * 3600L, i < 212 ? 15 : 900));
        }

        List<OnDelays.Effect> effects = OnDelays.of(alarms, Timing.PLAIN);

        assertThat(effects.get(0)).isEqualTo(new OnDelays.Effect(Duration.ofSeconds(20), 240, 212));
        assertThat(effects).extracting(OnDelays.Effect::removed).containsExactly(212, 212, 212);
    }

    @Test
    void an_alarm_that_holds_as_long_as_the_delay_is_called_and_so_is_one_that_holds_still() {
        assertThat(OnDelays.count(List.of(alarm(0, 20)), Timing.PLAIN, Duration.ofSeconds(20)))
                .isEqualTo(1);
        assertThat(OnDelays.count(List.of(alarm(0, 19)), Timing.PLAIN, Duration.ofSeconds(20)))
                .isZero();
        assertThat(OnDelays.count(List.of(alarm(0, 0)), Timing.PLAIN, Duration.ofMinutes(5)))
                .isEqualTo(1);
    }

    @Test
    void only_longer_delays_than_the_one_that_is_are_tried() {
        var timing = new Timing(Duration.ofMinutes(1), Duration.ZERO, false, Optional.empty(), Timing.PLAIN.nuisance());

        assertThat(OnDelays.of(List.of(alarm(0, 120), alarm(4000, 900)), timing))
                .containsExactly(new OnDelays.Effect(Duration.ofMinutes(5), 2, 1));
    }

    @Test
    void nothing_is_said_where_no_delay_would_do_anything() {
        assertThat(OnDelays.of(List.of(alarm(0, 3600)), Timing.PLAIN)).isEmpty();
        assertThat(OnDelays.of(List.of(), Timing.PLAIN)).isEmpty();
    }
}
