package yardlight.db.reading;

import java.time.Duration;
import java.time.Instant;

/**
 * One number for a series and a moment, to the millisecond, or for a series and a day of UTC. They order by the series and
 * then by time: a stretch of a series is a stretch of numbers.
 */
public final class Slot {

    /** Nothing that was measured is older. */
    public static final Instant FIRST = Instant.parse("2020-01-01T00:00:00Z");

    /** Series are numbered up to this. */
    public static final int MOST_SERIES = (1 << 21) - 1;

    static final long DAY = Duration.ofDays(1).toMillis();

    /** Milliseconds for 139 years, and days for as many and more. */
    private static final int TIME_BITS = 42;

    private static final int DAY_BITS = 16;

    private Slot() {}

    /** Of a moment; parts of a millisecond are cut off. */
    public static long of(int series, Instant at) {
        return of(series, at.toEpochMilli() - FIRST.toEpochMilli());
    }

    private static long of(int series, long millis) {
        if (series < 0 || series > MOST_SERIES || millis < 0 || millis >= 1L << TIME_BITS) {
            throw new IllegalArgumentException("series and time must be within bounds: " + series + ", " + millis);
        }
        return (long) series << TIME_BITS | millis;
    }

    static long startOf(int series, int day) {
        return of(series, day * DAY);
    }

    static Instant at(long slot) {
        return FIRST.plusMillis(slot & (1L << TIME_BITS) - 1);
    }

    /** Of a day, counted from the first of 2020. */
    public static long ofDay(int series, int day) {
        if (series < 0 || series > MOST_SERIES || day < 0 || day >= 1 << DAY_BITS) {
            throw new IllegalArgumentException("series and day must be within bounds: " + series + ", " + day);
        }
        return (long) series << DAY_BITS | day;
    }

    static int day(long slotOfDay) {
        return (int) (slotOfDay & (1 << DAY_BITS) - 1);
    }

    /** The day of UTC on which a moment lies; 0 before 2020. */
    public static int day(Instant at) {
        return (int) Math.max(0, Math.floorDiv(at.toEpochMilli() - FIRST.toEpochMilli(), DAY));
    }

    static Instant startOf(int day) {
        return FIRST.plusMillis(day * DAY);
    }
}
