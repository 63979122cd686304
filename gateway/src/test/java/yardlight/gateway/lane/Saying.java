package yardlight.gateway.lane;

import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;

/** Events of the fixtures' box, as a test wants them. */
final class Saying {

    private static final String BOX = "mesa-9-box";

    private Saying() {}

    static PostedEvent active(AlarmKey key) {
        return saying(key, Measured.NOTHING);
    }

    static PostedEvent saying(AlarmKey key, Measured measured) {
        return event(new Report(key, Optional.of(BOX), true, Optional.empty(), measured, Instant.now(), false));
    }

    static PostedEvent raised(AlarmKey key) {
        return event(new Report(
                key, Optional.of(BOX), true, Optional.of(Priority.CRITICAL), Measured.NOTHING, Instant.now(), false));
    }

    static PostedEvent normal(AlarmKey key) {
        return event(
                new Report(key, Optional.of(BOX), false, Optional.empty(), Measured.NOTHING, Instant.now(), false));
    }

    static PostedEvent event(Report report) {
        return new PostedEvent(Optional.empty(), report);
    }

    static PostedEvent named(String id, PostedEvent event) {
        return new PostedEvent(Optional.of(id), event.report());
    }
}
