package yardlight.escalation.ladder;

import java.time.Duration;
import java.util.List;

/**
 * One step of a ladder.
 *
 * @param call whom: contact ids, {@code roster:} and the id of a roster, or {@code everyone}
 * @param delay how long to wait for an answer before going on
 * @param rounds how often the rung is called before the next one
 */
public record Rung(List<String> call, Duration delay, int rounds) {

    public static final String EVERYONE = "everyone";
    public static final String ROSTER = "roster:";

    public Rung {
        call = List.copyOf(call);
        if (call.isEmpty()) {
            throw new IllegalArgumentException("rung must call somebody");
        }
        if (delay.isNegative() || delay.isZero()) {
            throw new IllegalArgumentException("rung wait must be positive: " + delay);
        }
        if (rounds < 1) {
            throw new IllegalArgumentException("rung rounds must be at least 1: " + rounds);
        }
    }
}
