package yardlight.escalation.coverage;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import yardlight.escalation.alarm.Priority;

/**
 * A time in which an alarm of one of these priorities is called to nobody at once.
 *
 * @param from inclusive
 * @param to exclusive
 * @param priorities at least one, in order
 */
public record Gap(Instant from, Instant to, Set<Priority> priorities) {

    public Gap {
        if (priorities.isEmpty() || !from.isBefore(to)) {
            throw new IllegalArgumentException("gap must have a length and a priority: " + from + " to " + to);
        }
        priorities = Collections.unmodifiableSet(EnumSet.copyOf(priorities));
    }

    public Duration length() {
        return Duration.between(from, to);
    }
}
