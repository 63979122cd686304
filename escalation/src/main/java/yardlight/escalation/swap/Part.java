package yardlight.escalation.swap;

import java.time.LocalDateTime;

/**
 * A time of a roster.
 *
 * @param from start, inclusive, local to the roster's zone
 * @param to end, exclusive
 */
public record Part(LocalDateTime from, LocalDateTime to) {

    public Part {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("part must end after it starts: " + from + " to " + to);
        }
    }
}
