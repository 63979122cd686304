package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Stimulus;

class FullLaneTest {

    private final JournalLane lane = new JournalLane(Duration.ZERO, Instant.EPOCH);

    @Test
    void refuses_at_once_what_no_longer_fits_and_keeps_what_is_in() {
        lane.open();
        var stimulus = new Stimulus.BoxDue("mesa-9-box");
        while (lane.queue().remainingCapacity() > 0) {
            assertThat(lane.put(stimulus)).isNotDone();
        }

        assertThat(lane.put(stimulus)).isCompletedExceptionally();
        assertThatThrownBy(() -> lane.events("mesa-9-box", List.of(), false))
                .isInstanceOf(LaneBusy.class)
                .hasMessageContaining("too much is waiting");
        assertThat(lane.queue()).hasSize(20_000);
    }
}
