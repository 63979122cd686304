package yardlight.escalation.runtime;

import java.time.Duration;
import java.time.Instant;

/**
 * A while in which a signal is known to have been one thing.
 *
 * @param from inclusive
 * @param to exclusive; not before {@code from}
 */
public record Segment(Instant from, Instant to, boolean on) {

    Duration length() {
        return Duration.between(from, to);
    }

    /** As much of it as lies at or after this instant. */
    Segment since(Instant start) {
        return from.isBefore(start) ? new Segment(start, to, on) : this;
    }

    Segment until(Instant end) {
        return new Segment(from, end, on);
    }
}
