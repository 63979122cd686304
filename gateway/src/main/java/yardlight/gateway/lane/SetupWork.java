package yardlight.gateway.lane;

import java.util.Collection;
import java.util.OptionalInt;
import yardlight.db.journal.Wants;
import yardlight.escalation.Answer;
import yardlight.escalation.Decision;
import yardlight.escalation.Stimulus;

/**
 * Another setup: its document is stored with what it changes, and the works after it in the batch go by it.
 *
 * @param seen the version that it was made from; when given, another one that holds by now is not written over
 */
record SetupWork(String document, Stimulus.SetupChanged change, OptionalInt seen) implements Work<Answer> {

    private static final Answer OVERTAKEN = new Answer.Refusal("the setup was changed meanwhile");

    @Override
    public void wants(Wants wants, Collection<String> names) {
        wants.add(change);
    }

    @Override
    public Answer take(Turn turn) {
        if (seen.isPresent() && seen.getAsInt() != turn.writing().setupVersion()) {
            return OVERTAKEN;
        }
        Decision decision = turn.decide(change);
        if (decision.answer() instanceof Answer.Refusal) {
            turn.apply(decision);
            return decision.answer();
        }
        turn.setup(document, change);
        turn.apply(decision);
        return decision.answer();
    }

    @Override
    public String about() {
        return "setup by " + change.by();
    }
}
