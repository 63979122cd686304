package yardlight.escalation.limit;

import java.time.Duration;
import java.util.List;

/**
 * A value that does not change at all although readings come. Over a gap longer than half the time nothing is known, so it
 * begins anew.
 */
final class Stillness {

    static final String NAME = "stuck";

    private Stillness() {}

    static void look(Round round, Duration after) {
        double limit = after.toNanos() / 1e9;
        List<Double> noted = round.noted(NAME);
        boolean same =
                round.before().filter(one -> one.value() == round.value()).isPresent();
        boolean held = round.holds(Conditions.STUCK);
        boolean watched = !noted.isEmpty() && (held || round.seconds() - noted.get(1) <= limit / 2);
        double since = same && watched ? noted.get(0) : round.seconds();
        round.note(NAME, List.of(since, round.seconds()));
        boolean holds = same && (held || round.seconds() - since >= limit);
        round.say(Conditions.STUCK, holds, round.value());
    }
}
