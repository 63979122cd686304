package yardlight.escalation.roster;

import java.time.LocalDateTime;

/**
 * A swap for a stretch of time: the contact stands in for whoever has the tour.
 *
 * @param from start, inclusive, local to the roster's zone
 * @param to end, exclusive
 */
public record Relief(LocalDateTime from, LocalDateTime to, String contact) {

    public Relief {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("relief must end after it starts: " + from + " to " + to);
        }
    }
}
