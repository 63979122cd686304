package yardlight.gateway.due;

import yardlight.db.columns.AlarmColumns;
import yardlight.db.due.DueKey;
import yardlight.escalation.Stimulus;

/** What the engine is told when something is due. */
final class Stimuli {

    private Stimuli() {}

    static Stimulus of(DueKey key) {
        return switch (key.kind()) {
            case ALARM -> new Stimulus.AlarmDue(AlarmColumns.key(key.subject()));
            case CALLOUT -> new Stimulus.CalloutDue(key.subject());
            case DESK -> new Stimulus.DeskDue(key.subject());
            case BOX -> new Stimulus.BoxDue(key.subject());
        };
    }
}
