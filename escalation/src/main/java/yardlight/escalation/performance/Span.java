package yardlight.escalation.performance;

import java.time.Duration;
import java.time.Instant;

/**
 * A stretch of time.
 *
 * @param from inclusive
 * @param to exclusive, not before {@code from}
 */
public record Span(Instant from, Instant to) {

    public Span {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("a span must not end before it begins: " + from + " to " + to);
        }
    }

    public Duration length() {
        return Duration.between(from, to);
    }

    public boolean holds(Instant instant) {
        return !instant.isBefore(from) && instant.isBefore(to);
    }

    /** How much of this one lies in the other. */
    Duration within(Span other) {
        Instant start = from.isAfter(other.from) ? from : other.from;
        Instant end = to.isBefore(other.to) ? to : other.to;
        return end.isAfter(start) ? Duration.between(start, end) : Duration.ZERO;
    }
}
