package yardlight.escalation.runtime;

import java.time.Duration;
import java.util.Optional;

/**
 * What is expected of a pump whose signal a point reads.
 *
 * @param on from this reading on it runs, in the point's unit: half of an on/off signal of 0 and 1, or some amperes
 * @param hold for how long a reading is believed; longer than boxes that send only changes are silent
 * @param empties the point of the same site that reads the level of what it empties
 * @param pressure the point of the same site that reads the pressure behind it
 * @param unusual what share of the day is worth a text
 * @param days with how many earlier days it is compared
 */
public record PumpRules(
        double on, Duration hold, Optional<String> empties, Optional<String> pressure, Unusual unusual, int days) {

    public static final double HALF = 0.5;

    public static final Duration HOLD = Duration.ofHours(1);

    /** Two weeks. */
    public static final int DAYS = 14;

    public PumpRules {
        if (hold.isNegative() || hold.isZero()) {
            throw new IllegalArgumentException("hold must be positive: " + hold);
        }
        if (days < Comparison.FEWEST || days > DAYS) {
            throw new IllegalArgumentException(
                    "days must lie between " + Comparison.FEWEST + " and " + DAYS + ": " + days);
        }
        if (Double.isNaN(on)) {
            throw new IllegalArgumentException("on must be a number: " + on);
        }
    }

    /** Whether it does something to what this point reads. */
    public boolean reaches(String point) {
        return empties.equals(Optional.of(point)) || pressure.equals(Optional.of(point));
    }

    public boolean runs(double reading) {
        return reading >= on;
    }
}
