package yardlight.db.reading;

import java.time.Duration;

/**
 * How long readings are kept, and how.
 *
 * @param all how long anything of them is kept, in whole days
 * @param whole how long each one is kept as it came, in whole days
 * @param step of the sums afterwards: smallest, largest and mean of each; from a minute to a day, of which it is a part
 */
public record Keep(Duration all, Duration whole, Duration step) {

    public static final Keep USUAL = new Keep(Duration.ofDays(400), Duration.ofDays(30), Duration.ofMinutes(15));

    public Keep {
        if (whole.compareTo(Duration.ofDays(1)) < 0 || all.compareTo(whole) < 0) {
            throw new IllegalArgumentException(
                    "readings must be kept whole for at least a day, and all at least as long: " + whole + ", " + all);
        }
        if (step.compareTo(Duration.ofMinutes(1)) < 0 || Slot.DAY % step.toMillis() != 0) {
            throw new IllegalArgumentException("step must be at least a minute and divide a day: " + step);
        }
    }
}
