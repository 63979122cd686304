package yardlight.escalation.alarm;

import static yardlight.escalation.alarm.AlarmState.ACKNOWLEDGED;
import static yardlight.escalation.alarm.AlarmState.LATCHED_ACKNOWLEDGED;
import static yardlight.escalation.alarm.AlarmState.LATCHED_UNACKNOWLEDGED;
import static yardlight.escalation.alarm.AlarmState.NORMAL;
import static yardlight.escalation.alarm.AlarmState.OUT_OF_SERVICE;
import static yardlight.escalation.alarm.AlarmState.RETURNED_UNACKNOWLEDGED;
import static yardlight.escalation.alarm.AlarmState.SHELVED;
import static yardlight.escalation.alarm.AlarmState.SUPPRESSED_BY_DESIGN;
import static yardlight.escalation.alarm.AlarmState.UNACKNOWLEDGED;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The whole life of an alarm as a table: from, trigger, guard, to. The first row that fits decides; no row means that
 * the move is not allowed. After ISA-18.2, with the latched states of its 2009 edition; where the standard leaves the
 * choice to the owner (a latched alarm that occurs again), the choice here is the louder one.
 */
public final class AlarmTransitions {

    /** What a guard may look at. All of it is as it stands after the trigger. */
    public record Facts(boolean active, boolean seen, boolean latching, boolean latched, boolean answeredChatter) {}

    record Row(AlarmState from, AlarmTrigger trigger, Guard guard, AlarmState to) {}

    enum Guard {
        ALWAYS(facts -> true),
        LATCHING(Facts::latching),
        NOT_LATCHING(facts -> !facts.latching()),
        ANSWERED_CHATTER(Facts::answeredChatter),
        ACTIVE_SEEN(facts -> facts.active() && facts.seen()),
        ACTIVE_UNSEEN(facts -> facts.active() && !facts.seen()),
        LATCHED_SEEN(facts -> facts.latched() && facts.seen()),
        LATCHED_UNSEEN(facts -> facts.latched() && !facts.seen()),
        CLEAR(facts -> !facts.active() && !facts.latched());

        private final Predicate<Facts> test;

        Guard(Predicate<Facts> test) {
            this.test = test;
        }
    }

    static final List<Row> TABLE = table();

    private AlarmTransitions() {}

    /** The state after the trigger, or empty when the table does not allow it. */
    public static Optional<AlarmState> next(AlarmState from, AlarmTrigger trigger, Facts facts) {
        for (Row row : TABLE) {
            if (row.from == from && row.trigger == trigger && row.guard.test.test(facts)) {
                return Optional.of(row.to);
            }
        }
        return Optional.empty();
    }

    private static List<Row> table() {
        var rows = new ArrayList<Row>();
        // Somebody who has just answered a chattering alarm is not asked again at its next flutter.
        rows.add(new Row(NORMAL, AlarmTrigger.OCCUR, Guard.ANSWERED_CHATTER, ACKNOWLEDGED));
        rows.add(new Row(NORMAL, AlarmTrigger.OCCUR, Guard.ALWAYS, UNACKNOWLEDGED));
        rows.add(new Row(UNACKNOWLEDGED, AlarmTrigger.ACKNOWLEDGE, Guard.ALWAYS, ACKNOWLEDGED));
        rows.add(new Row(UNACKNOWLEDGED, AlarmTrigger.RETURN, Guard.LATCHING, LATCHED_UNACKNOWLEDGED));
        rows.add(new Row(UNACKNOWLEDGED, AlarmTrigger.RETURN, Guard.NOT_LATCHING, RETURNED_UNACKNOWLEDGED));
        rows.add(new Row(UNACKNOWLEDGED, AlarmTrigger.REALARM, Guard.ALWAYS, UNACKNOWLEDGED));
        rows.add(new Row(ACKNOWLEDGED, AlarmTrigger.RETURN, Guard.LATCHING, LATCHED_ACKNOWLEDGED));
        rows.add(new Row(ACKNOWLEDGED, AlarmTrigger.RETURN, Guard.NOT_LATCHING, NORMAL));
        rows.add(new Row(ACKNOWLEDGED, AlarmTrigger.REALARM, Guard.ALWAYS, UNACKNOWLEDGED));
        rows.add(new Row(RETURNED_UNACKNOWLEDGED, AlarmTrigger.ACKNOWLEDGE, Guard.ALWAYS, NORMAL));
        rows.add(new Row(RETURNED_UNACKNOWLEDGED, AlarmTrigger.OCCUR, Guard.ALWAYS, UNACKNOWLEDGED));
        rows.add(new Row(LATCHED_UNACKNOWLEDGED, AlarmTrigger.ACKNOWLEDGE, Guard.ALWAYS, LATCHED_ACKNOWLEDGED));
        rows.add(new Row(LATCHED_UNACKNOWLEDGED, AlarmTrigger.OCCUR, Guard.ALWAYS, UNACKNOWLEDGED));
        rows.add(new Row(LATCHED_ACKNOWLEDGED, AlarmTrigger.OCCUR, Guard.ALWAYS, UNACKNOWLEDGED));
        rows.add(new Row(LATCHED_ACKNOWLEDGED, AlarmTrigger.RESET, Guard.ALWAYS, NORMAL));
        for (AlarmState live : EnumSet.range(NORMAL, LATCHED_ACKNOWLEDGED)) {
            rows.add(new Row(live, AlarmTrigger.SHELVE, Guard.ALWAYS, SHELVED));
            rows.add(new Row(live, AlarmTrigger.SUPPRESS, Guard.ALWAYS, SUPPRESSED_BY_DESIGN));
            rows.add(new Row(live, AlarmTrigger.REMOVE, Guard.ALWAYS, OUT_OF_SERVICE));
        }
        withheld(rows, SHELVED, AlarmTrigger.UNSHELVE);
        withheld(rows, SUPPRESSED_BY_DESIGN, AlarmTrigger.UNSUPPRESS);
        withheld(rows, OUT_OF_SERVICE, AlarmTrigger.RESTORE);
        rows.add(new Row(SHELVED, AlarmTrigger.REMOVE, Guard.ALWAYS, OUT_OF_SERVICE));
        rows.add(new Row(SUPPRESSED_BY_DESIGN, AlarmTrigger.REMOVE, Guard.ALWAYS, OUT_OF_SERVICE));
        return List.copyOf(rows);
    }

    /** A withheld alarm follows its condition unseen, and comes back to the state that the condition has by then. */
    private static void withheld(List<Row> rows, AlarmState state, AlarmTrigger back) {
        rows.add(new Row(state, AlarmTrigger.OCCUR, Guard.ALWAYS, state));
        rows.add(new Row(state, AlarmTrigger.RETURN, Guard.ALWAYS, state));
        rows.add(new Row(state, back, Guard.ACTIVE_SEEN, ACKNOWLEDGED));
        rows.add(new Row(state, back, Guard.ACTIVE_UNSEEN, UNACKNOWLEDGED));
        rows.add(new Row(state, back, Guard.LATCHED_SEEN, LATCHED_ACKNOWLEDGED));
        rows.add(new Row(state, back, Guard.LATCHED_UNSEEN, LATCHED_UNACKNOWLEDGED));
        rows.add(new Row(state, back, Guard.CLEAR, NORMAL));
    }
}
