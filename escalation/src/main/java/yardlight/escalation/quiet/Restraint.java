package yardlight.escalation.quiet;

import java.time.Duration;
import yardlight.escalation.alarm.Flood;

/**
 * How many texts a person gets before the rest arrives bundled. What an hour may bring leaves critical notices alone; they
 * too are bundled, for a moment, when many come at once.
 *
 * @param burst texts about unanswered callouts that go out one by one
 * @param criticalBurst the same for texts that are critical: it counts the others as well
 * @param within time in which they are counted; what comes on top of them waits until that time is over
 * @param perHour texts in any hour
 * @param flood when a person has more to be told than they can take in one by one
 * @param pace in a flood, the time from one text to the next, critical or not. With the usual numbers ten minutes of it
 *     bring four texts before it is known to be one and eight after that, whatever happens
 */
public record Restraint(
        int burst, int criticalBurst, Duration within, int perHour, Flood.Numbers flood, Duration pace) {

    public static final int USUAL_BURST = 2;
    public static final int USUAL_CRITICAL_BURST = 4;
    public static final Duration USUAL_WITHIN = Duration.ofMinutes(1);
    public static final Duration USUAL_PACE = Duration.ofSeconds(75);

    /** Texts with nothing but news within {@link #NEWS_WITHIN}: one that somebody has it, and one that it is over. */
    public static final int NEWS = 2;

    public static final Duration NEWS_WITHIN = Duration.ofMinutes(10);

    public Restraint {
        if (burst < 1) {
            throw new IllegalArgumentException("burst must be at least 1: " + burst);
        }
        if (criticalBurst < burst) {
            throw new IllegalArgumentException("criticalBurst must not be less than burst: " + criticalBurst);
        }
        if (perHour < 1) {
            throw new IllegalArgumentException("perHour must be at least 1: " + perHour);
        }
        remembered("within", within);
        remembered("pace", pace);
        remembered("flood window", flood.window());
    }

    /** A desk remembers the texts of an hour and no more. */
    private static void remembered(String name, Duration time) {
        if (time.isNegative() || time.isZero() || time.compareTo(Desk.REMEMBERS) > 0) {
            throw new IllegalArgumentException(name + " must be positive and at most an hour: " + time);
        }
    }

    public static Restraint perHour(int perHour) {
        return new Restraint(USUAL_BURST, USUAL_CRITICAL_BURST, USUAL_WITHIN, perHour, Flood.Numbers.USUAL, USUAL_PACE);
    }
}
