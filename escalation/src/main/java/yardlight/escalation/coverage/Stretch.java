package yardlight.escalation.coverage;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A time in which the same people would be reached in the same way.
 *
 * @param from inclusive
 * @param to exclusive
 * @param first who hears first; empty when nobody hears within eight days
 * @param second who hears next, another person
 */
public record Stretch(Instant from, Instant to, Optional<Heard> first, Optional<Heard> second) {

    public Duration length() {
        return Duration.between(from, to);
    }

    /** Whether somebody hears at once, whenever in this time the alarm comes. */
    public boolean heardAtOnce() {
        return first.flatMap(Heard::after).filter(Duration::isZero).isPresent();
    }
}
