package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Stimulus;

class LateTest {

    private final Workbench bench = new Workbench();
    private final Late late = new Late(bench.sending, bench.intake, Duration.ofSeconds(30));

    @Test
    void tells_of_what_has_been_waiting_for_30_seconds_and_once_only() {
        bench.outbox.waiting.add(bench.outgoing("late", 30));
        bench.outbox.waiting.add(bench.outgoing("not-yet", 29));

        late.look();
        late.look();
        assertThat(bench.intake.stimuli).containsExactly(new Stimulus.Overdue("late", 0));

        bench.now = bench.now.plusSeconds(5);
        late.look();
        assertThat(bench.intake.stimuli)
                .containsExactly(new Stimulus.Overdue("late", 0), new Stimulus.Overdue("not-yet", 0));
    }

    @Test
    void tells_again_what_the_lane_did_not_take() {
        bench.outbox.waiting.add(bench.outgoing("late", 40));
        bench.intake.trouble = Optional.of(new IllegalStateException("too much is waiting to be stored"));
        late.look();
        bench.intake.trouble = Optional.empty();

        late.look();
        late.look();

        assertThat(bench.intake.stimuli).hasSize(2);
    }

    @Test
    void misses_nothing_when_the_clock_is_put_back() {
        late.look();
        bench.now = bench.now.minusSeconds(3600);
        late.look();
        bench.outbox.waiting.add(bench.outgoing("late", 0));

        bench.now = bench.now.plusSeconds(30);
        late.look();

        assertThat(bench.intake.stimuli).containsExactly(new Stimulus.Overdue("late", 0));
    }
}
