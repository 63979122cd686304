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

    public static Restraint perHour(int perHour) {
        return new Restraint(USUAL_BURST, USUAL_WITHIN, perHour);
    }
}
