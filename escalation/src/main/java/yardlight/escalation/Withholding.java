package yardlight.escalation;

import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.AlarmTrigger;
import yardlight.escalation.setup.Point;

/** Which alarms are kept from people: their point is out of service, or another alarm of the site explains them. */
final class Withholding {

    private final Draft draft;

    Withholding(Draft draft) {
        this.draft = draft;
    }

    /** The move that the alarm has to make now; empty when it stands as it should. */
    Optional<AlarmTrigger> trigger(Alarm alarm, Point point) {
        boolean explained = point.suppressedWhile().stream()
                .anyMatch(other -> active(alarm.key().site(), other));
        return switch (alarm.state()) {
            case OUT_OF_SERVICE -> point.inService() ? Optional.of(AlarmTrigger.RESTORE) : Optional.empty();
            case SUPPRESSED_BY_DESIGN ->
                !point.inService()
                        ? Optional.of(AlarmTrigger.REMOVE)
                        : explained ? Optional.empty() : Optional.of(AlarmTrigger.UNSUPPRESS);
            case SHELVED -> point.inService() ? Optional.empty() : Optional.of(AlarmTrigger.REMOVE);
            case NORMAL,
                    UNACKNOWLEDGED,
                    ACKNOWLEDGED,
                    RETURNED_UNACKNOWLEDGED,
                    LATCHED_UNACKNOWLEDGED,
                    LATCHED_ACKNOWLEDGED ->
                !point.inService()
                        ? Optional.of(AlarmTrigger.REMOVE)
                        : explained ? Optional.of(AlarmTrigger.SUPPRESS) : Optional.empty();
        };
    }

    private boolean active(String site, String local) {
        Alarm other = draft.alarm(AlarmKey.at(site, local));
        // What is itself explained, or being worked on, explains nothing.
        return other.active()
                && other.state() != AlarmState.SUPPRESSED_BY_DESIGN
                && other.state() != AlarmState.OUT_OF_SERVICE;
    }
}
