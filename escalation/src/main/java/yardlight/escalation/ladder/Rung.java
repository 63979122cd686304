package yardlight.escalation.ladder;

import java.time.Duration;
import java.util.List;

/**
 * One step of a ladder.
 *
 * @param call whom: contact ids, {@code roster:} and the id of a roster, or {@code everyone}
 * @param delay how long to wait for an answer before going on
 * @param rounds how often the rung is called before the next one
 * @param asks whether it asks the site to shut in; then it may call nobody, and it is passed over unless that is turned on
 *     for the site and the alarm is critical
 */
public record Rung(List<String> call, Duration delay, int rounds, boolean asks) {

    public static final String EVERYONE = "everyone";
    public static final String ROSTER = "roster:";

    public Rung {
        call = List.copyOf(call);
        if (call.isEmpty() && !asks) {
            throw new IllegalArgumentException("rung must call somebody");
        }
        if (delay.isNegative() || delay.isZero()) {
            throw new IllegalArgumentException("rung wait must be positive: " + delay);
        }
        if (rounds < 1) {
            throw new IllegalArgumentException("rung rounds must be at least 1: " + rounds);
        }
    }

    /** One that calls people and nothing else. */
    public Rung(List<String> call, Duration delay, int rounds) {
        this(call, delay, rounds, false);
    }

    /** One that asks the site to shut in and calls nobody. */
    public static Rung asking(Duration delay) {
        return new Rung(List.of(), delay, 1, true);
    }
}
