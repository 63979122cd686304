package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CircuitTest {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    @Test
    void breaks_at_the_third_failure_in_a_row() {
        Circuit twice = Circuit.WELL.failed(NOW).failed(NOW);

        assertThat(twice).isInstanceOf(Circuit.Closed.class);
        assertThat(twice.passed().failed(NOW).failed(NOW)).isInstanceOf(Circuit.Closed.class);
        assertThat(twice.failed(NOW)).isEqualTo(new Circuit.Open(NOW.plusSeconds(5), 0));
    }

    @Test
    void is_knocked_at_after_5_15_and_30_seconds_and_then_every_minute() {
        var waits = new ArrayList<Long>();
        Circuit.Open open = broken();
        for (int i = 0; i < 6; i++) {
            waits.add(Duration.between(NOW, open.until()).toSeconds());
            open = (Circuit.Open) open.inVain(NOW);
        }

        assertThat(waits).isEqualTo(List.of(5L, 15L, 30L, 60L, 60L, 60L));
    }

    @Test
    void is_due_for_a_knock_when_its_time_has_come_and_when_the_clock_was_put_back() {
        Circuit.Open open = broken();

        assertThat(open.due(NOW.plusMillis(4_999))).isFalse();
        assertThat(open.due(NOW.plusSeconds(5))).isTrue();
        assertThat(open.due(NOW.minus(Duration.ofHours(1)))).isTrue();
    }

    @Test
    void lets_one_message_try_once_a_knock_was_answered() {
        Circuit trial = broken().answered();

        assertThat(trial).isInstanceOf(Circuit.Trial.class);
        assertThat(trial.passed()).isEqualTo(Circuit.WELL);
    }

    @Test
    void breaks_for_longer_when_that_message_fails() {
        Circuit again = broken().answered().failed(NOW);

        assertThat(again).isEqualTo(new Circuit.Open(NOW.plusSeconds(15), 1));
    }

    @Test
    void learns_nothing_from_what_was_under_way_when_it_broke_unless_it_was_taken() {
        assertThat(broken().failed(NOW.plusSeconds(3))).isEqualTo(broken());
        assertThat(broken().passed()).isEqualTo(Circuit.WELL);
    }

    private static Circuit.Open broken() {
        return (Circuit.Open) Circuit.WELL.failed(NOW).failed(NOW).failed(NOW);
    }
}
