package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Changes;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.setup.Setup;

/** What is remembered from one transaction to the next, with a limit of three alarms and three boxes. */
class MemoryTest {

    private static final int LIMIT = 3;

    private final Reads nothing = new Reads(new Pen(null, Optional.empty()));
    private final Memory memory = new Memory(LIMIT, LIMIT);

    @Test
    void is_all_that_was_looked_at_within_the_limits() {
        memory.keep(1, slice(LIMIT, LIMIT));

        assertThat(remembered(2).alarms).hasSize(LIMIT);
        memory.keep(3, slice(LIMIT, LIMIT));
        assertThat(remembered(4).boxes).hasSize(LIMIT);
    }

    @Test
    void gives_up_too_many_alarms_and_keeps_the_boxes() {
        memory.keep(1, slice(LIMIT + 1, LIMIT));

        Slice next = memory.take(2, nothing, Setup.EMPTY);

        assertThat(next.kept.alarms).isEmpty();
        assertThat(next.kept.boxes).hasSize(LIMIT);
        next.needBoxes(List.of("box-1"));
        assertThat(next.picture.box("box-1")).isPresent();
    }

    @Test
    void gives_up_all_when_there_are_too_many_boxes() {
        memory.keep(1, slice(1, LIMIT + 1));

        Kept next = remembered(2);

        assertThat(next.boxes).isEmpty();
        assertThat(next.alarms).isEmpty();
    }

    @Test
    void is_nothing_once_somebody_else_wrote() {
        memory.keep(1, slice(1, 1));

        assertThat(remembered(3).boxes).isEmpty();
    }

    private Kept remembered(long turn) {
        return memory.take(turn, nothing, Setup.EMPTY).kept;
    }

    /** As if so many alarms and boxes had been read. */
    private Slice slice(int alarms, int boxes) {
        var slice = new Slice(nothing, Setup.EMPTY);
        List<BoxWatch> watched = IntStream.rangeClosed(1, boxes)
                .mapToObj(i -> new BoxWatch(
                        "box-" + i, Fixtures.at("2026-11-25T01:00"), Optional.empty(), false, Heartbeat.BARE))
                .toList();
        slice.apply(new Changes(List.of(), List.of(), List.of(), List.of(), watched, Map.of()));
        watched.forEach(watch -> slice.kept.boxes.put(watch.box(), watch));
        IntStream.rangeClosed(1, alarms)
                .mapToObj(i -> Alarm.normal(new AlarmKey("mesa-9", "tank-" + i, "high")))
                .forEach(alarm -> slice.kept.alarms.put(alarm.key(), alarm));
        return slice;
    }
}
