package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import yardlight.escalation.Stimulus;
import yardlight.escalation.heartbeat.Heartbeat;

/** What shares a transaction. Where the lane waits for an hour, the test would not end. */
@Timeout(20)
class GatheringTest {

    private static final Handed<?> BEAT = new Handed<>(new BeatWork(new Stimulus.Beat("mesa-9-box", Heartbeat.BARE)));
    private static final Handed<?> EVENTS = new Handed<>(new PostedWork("mesa-9-box", List.of(), false));

    private final JournalLane patient = new JournalLane(Duration.ofHours(1), Instant.EPOCH);

    @Test
    void an_event_waits_for_nothing() throws InterruptedException {
        assertThat(next(patient, EVENTS)).containsExactly(EVENTS);
    }

    @Test
    void a_heartbeat_goes_as_soon_as_an_event_is_there() throws InterruptedException {
        assertThat(next(patient, BEAT, BEAT, EVENTS)).containsExactly(BEAT, BEAT, EVENTS);
    }

    @Test
    void a_heartbeat_waits_no_longer_than_it_was_told_to() throws InterruptedException {
        assertThat(next(new JournalLane(Duration.ofMillis(1), Instant.EPOCH), BEAT))
                .containsExactly(BEAT);
    }

    @Test
    void heartbeats_go_when_there_is_no_room_for_more() throws InterruptedException {
        patient.queue().addAll(List.of(BEAT, BEAT, BEAT));

        assertThat(patient.next(2, 100, 0)).hasSize(2);
    }

    @Test
    void heartbeats_that_come_later_share_the_transaction() throws InterruptedException {
        var later = new Thread(() -> {
            while (!patient.queue().isEmpty()) {
                Thread.onSpinWait();
            }
            patient.queue().addAll(List.of(BEAT, EVENTS));
        });
        patient.queue().add(BEAT);
        later.start();

        assertThat(patient.next(500, 5_000, 1_000)).containsExactly(BEAT, BEAT, EVENTS);
    }

    private static List<Handed<?>> next(JournalLane lane, Handed<?>... works) throws InterruptedException {
        lane.queue().addAll(List.of(works));
        return lane.next(500, 5_000, 1_000);
    }
}
