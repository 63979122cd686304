package yardlight.gateway.lane;

import java.util.Collection;
import yardlight.db.journal.Wants;
import yardlight.escalation.Answer;
import yardlight.escalation.Decision;
import yardlight.escalation.Stimulus;

/** Another setup: its document is stored with what it changes, and the works after it in the batch go by it. */
record SetupWork(String document, Stimulus.SetupChanged change) implements Work<Answer> {

    @Override
    public void wants(Wants wants, Collection<String> names) {
        wants.add(change);
    }

    @Override
    public Answer take(Turn turn) {
        Decision decision = turn.decide(change);
        turn.setup(document, change);
        turn.apply(decision);
        return decision.answer();
    }

    @Override
    public String about() {
        return "setup by " + change.by();
    }
}
