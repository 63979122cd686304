package yardlight.escalation.roster;

import java.time.Instant;
import java.util.Optional;

/**
 * A time in which the same contact is on call for the same reason.
 *
 * @param from start, inclusive
 * @param to end, exclusive
 * @param tour who has the tour, as written in the roster; empty before the first one
 * @param relief the swap that holds instead; empty when none does
 */
public record Stretch(Instant from, Instant to, Optional<String> tour, Optional<Relief> relief) {

    /** Who is on call, as written in the roster; empty when nobody is. */
    public Optional<String> onCall() {
        return relief.map(Relief::contact).or(() -> tour);
    }
}
