package yardlight.gateway.lane;

import java.util.Collection;
import java.util.Optional;
import yardlight.db.journal.Wants;
import yardlight.escalation.Answer;
import yardlight.escalation.Decision;

/** The outcome of an attempt, with what the engine makes of it. */
record TriedWork(Tried tried) implements Work<Answer> {

    @Override
    public void wants(Wants wants, Collection<String> names) {
        tried.fate().ifPresent(wants::add);
    }

    @Override
    public Answer take(Turn turn) {
        Optional<Decision> decision = tried.fate().map(turn::decide);
        turn.writing().attempt(tried.attempt());
        tried.retry().ifPresent(turn.writing()::putOff);
        turn.log(tried.entries());
        decision.ifPresent(turn::apply);
        return decision.map(Decision::answer).orElseGet(Answer.Done::new);
    }

    @Override
    public String about() {
        return tried.attempt().toString();
    }
}
