package yardlight.gateway.lane;

import java.util.Collection;
import java.util.List;
import yardlight.db.journal.Wants;
import yardlight.escalation.Answer;
import yardlight.escalation.Entry;

/** A line for the log and nothing else. */
record LineWork(Entry line) implements Work<Answer> {

    @Override
    public void wants(Wants wants, Collection<String> names) {
        // A line needs to know nothing.
    }

    @Override
    public Answer take(Turn turn) {
        turn.log(List.of(line));
        return new Answer.Done();
    }

    @Override
    public String about() {
        return line.toString();
    }
}
