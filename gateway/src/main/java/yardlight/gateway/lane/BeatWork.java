package yardlight.gateway.lane;

import java.util.Collection;
import yardlight.db.journal.Wants;
import yardlight.escalation.Answer;
import yardlight.escalation.Decision;
import yardlight.escalation.Stimulus;

/** A heartbeat. However many of one box are in a batch, the box's row is written once. */
record BeatWork(Stimulus.Beat beat) implements Work<Answer> {

    @Override
    public void wants(Wants wants, Collection<String> names) {
        wants.add(beat);
    }

    @Override
    public Answer take(Turn turn) {
        Decision decision = turn.decide(beat);
        if (decision.answer() instanceof Answer.Refusal refusal) {
            throw new UnknownBox(refusal.reason());
        }
        turn.apply(decision);
        return decision.answer();
    }

    /** Boxes by the thousand say that they are alive; one by one, each would cost a transaction. */
    @Override
    public boolean patient() {
        return true;
    }

    @Override
    public String about() {
        return beat.toString();
    }
}
