package yardlight.gateway.strip;

import java.time.Duration;
import java.time.Instant;

/**
 * A time that is looked at.
 *
 * @param from inclusive
 * @param to exclusive, after {@code from}
 */
public record Stretch(Instant from, Instant to) {

    public Stretch {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("stretch must end after it begins: " + from + ", " + to);
        }
    }

    public Duration length() {
        return Duration.between(from, to);
    }

    /** How far along a moment stands: 0 at the beginning, 1 at the end, beyond them outside. */
    public double along(Instant at) {
        return (double) Duration.between(from, at).toMillis() / length().toMillis();
    }

    /** The nearest moment that lies in it. */
    public Instant within(Instant at) {
        return at.isBefore(from) ? from : at.isAfter(to) ? to : at;
    }
}
