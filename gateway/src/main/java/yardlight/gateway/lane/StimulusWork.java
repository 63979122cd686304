package yardlight.gateway.lane;

import java.util.Collection;
import java.util.Optional;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.GaugeColumns;
import yardlight.db.due.DueKey;
import yardlight.db.due.DueKey.Kind;
import yardlight.db.journal.Wants;
import yardlight.escalation.Answer;
import yardlight.escalation.Decision;
import yardlight.escalation.ShutInSaid;
import yardlight.escalation.Stimulus;
import yardlight.escalation.SwapSaid;

/** A stimulus that needs nothing but a decision. */
record StimulusWork(Stimulus stimulus) implements Work<Answer> {

    @Override
    public void wants(Wants wants, Collection<String> names) {
        wants.add(stimulus);
    }

    @Override
    public Answer take(Turn turn) {
        Decision decision = turn.decide(stimulus);
        turn.apply(decision);
        fired().ifPresent(turn.writing()::fired);
        return decision.answer();
    }

    /** The due row that was the reason for this, if one was. */
    private Optional<DueKey> fired() {
        return switch (stimulus.kind()) {
            case ALARM_DUE -> due(Kind.ALARM, AlarmColumns.key(((Stimulus.AlarmDue) stimulus).key()));
            case CALLOUT_DUE -> due(Kind.CALLOUT, ((Stimulus.CalloutDue) stimulus).callout());
            case DESK_DUE -> due(Kind.DESK, ((Stimulus.DeskDue) stimulus).contact());
            case NOTICE_DUE -> due(Kind.NOTICE, ((Stimulus.NoticeDue) stimulus).notice());
            case BOX_DUE -> due(Kind.BOX, ((Stimulus.BoxDue) stimulus).box());
            case GAUGE_DUE -> due(Kind.GAUGE, GaugeColumns.id(((Stimulus.GaugeDue) stimulus).key()));
            case ALLS_WELL_DUE -> due(Kind.WELL, ((Stimulus.AllsWellDue) stimulus).contact());
            case SHUT_IN -> shutIn((Stimulus.ShutIn) stimulus);
            case SWAP -> swap(((Stimulus.Swap) stimulus).said());
            case REPORTED,
                    MEASURED,
                    BEAT,
                    ACKNOWLEDGE,
                    ANSWER_NOTICE,
                    SHELVE,
                    UNSHELVE,
                    RESET,
                    NOTICE_FATE,
                    OVERDUE,
                    CARRIER,
                    PUT_OFF,
                    TEST_LINE,
                    REPLIED,
                    LINK_USED,
                    SIGNED_IN,
                    STOPPED,
                    HANDOVER,
                    SETUP_CHANGED -> Optional.empty();
        };
    }

    private static Optional<DueKey> shutIn(Stimulus.ShutIn said) {
        return said.said().kind() == ShutInSaid.Kind.DUE ? due(Kind.SHUT_IN, said.site()) : Optional.empty();
    }

    private static Optional<DueKey> swap(SwapSaid said) {
        return said instanceof SwapSaid.Due due ? due(Kind.SWAP, due.offer()) : Optional.empty();
    }

    private static Optional<DueKey> due(Kind kind, String subject) {
        return Optional.of(new DueKey(kind, subject));
    }

    @Override
    public String about() {
        return stimulus.toString();
    }
}
