package yardlight.gateway.lane;

import java.util.Collection;
import yardlight.db.journal.AttemptRecord;
import yardlight.db.journal.Wants;
import yardlight.escalation.Answer;
import yardlight.escalation.Decision;
import yardlight.escalation.Stimulus;

/** The outcome of an attempt, with what the engine makes of it. */
record TriedWork(Tried tried) implements Work<Answer> {

    @Override
    public void wants(Wants wants, Collection<String> names) {
        wants.add(said());
    }

    @Override
    public Answer take(Turn turn) {
        Decision decision = turn.decide(said());
        turn.writing().attempt(tried.attempt());
        tried.retry().ifPresent(turn.writing()::putOff);
        turn.log(tried.entries());
        turn.apply(decision);
        return decision.answer();
    }

    /** What is tried again is no fate, and yet the line is known to be in trouble. */
    private Stimulus said() {
        AttemptRecord attempt = tried.attempt();
        return tried.fate().isPresent()
                ? tried.fate().get()
                : new Stimulus.PutOff(attempt.notice(), attempt.line(), attempt.channel() + ": " + attempt.detail());
    }

    @Override
    public String about() {
        return tried.attempt().toString();
    }
}
