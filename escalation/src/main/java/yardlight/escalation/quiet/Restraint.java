package yardlight.escalation.quiet;

import java.time.Duration;

/**
 * How many texts a person gets before the rest arrives bundled. Both limits leave critical notices alone.
 *
 * @param burst texts about unanswered callouts that go out one by one
 * @param within time in which they are counted; what comes on top of them waits until that time is over
 * @param perHour texts in any hour
 */
public record Restraint(int burst, Duration within, int perHour) {

    public static final int USUAL_BURST = 2;
    public static final Duration USUAL_WITHIN = Duration.ofMinutes(1);

    public Restraint {
        if (burst < 1) {
            throw new IllegalArgumentException("burst must be at least 1: " + burst);
        }
        // A desk remembers the texts of an hour and no more.
        if (within.isNegative() || within.isZero() || within.compareTo(Desk.REMEMBERS) > 0) {
            throw new IllegalArgumentException("within must be positive and at most an hour: " + within);
        }
        if (perHour < 1) {
            throw new IllegalArgumentException("perHour must be at least 1: " + perHour);
        }
    }

    public static Restraint perHour(int perHour) {
        return new Restraint(USUAL_BURST, USUAL_WITHIN, perHour);
    }
}
