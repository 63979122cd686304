package yardlight.escalation.limit;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A point's last day in at most {@link #MOST} samples, oldest first: of the last hour the first of each minute, of what is
 * older the first of each ten minutes. So it may lag behind the newest reading by a minute. Times are kept to the second and
 * values to seven digits; two series are equal if their samples are.
 */
public final class Series {

    /** Nothing yet. */
    public static final Series EMPTY = new Series(new long[0], new double[0]);

    public static final int MOST = 201;

    public static final Duration SPAN = Duration.ofHours(24);

    private static final long DENSE = 3_600;
    private static final long FINE = 60;
    private static final long COARSE = 600;
    private static final double DIGITS = 7;

    /** One of them. */
    public record Sample(Instant at, double value) {}

    private final long[] seconds;
    private final double[] values;

    private Series(long[] seconds, double[] values) {
        this.seconds = seconds;
        this.values = values;
    }

    /** These samples, as storage has them: of each the second since 1970 and the value, oldest first. */
    public static Series of(List<Double> numbers) {
        var seconds = new long[numbers.size() / 2];
        var values = new double[seconds.length];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = numbers.get(2 * i).longValue();
            values[i] = numbers.get(2 * i + 1);
        }
        return new Series(seconds, values);
    }

    /** The same with one more sample, which may be older than others; what became too old or too dense is gone. */
    public Series with(Instant at, double value) {
        long second = at.getEpochSecond();
        int place = Arrays.binarySearch(seconds, second);
        int size = seconds.length;
        boolean old = size > 0 && second < seconds[size - 1] - SPAN.toSeconds();
        boolean dense = size > 0
                && second > seconds[size - 1]
                && Math.floorDiv(second, FINE) == Math.floorDiv(seconds[size - 1], FINE);
        if (place >= 0 || old || dense) {
            return this;
        }
        int before = -place - 1;
        var times = new long[size + 1];
        var all = new double[size + 1];
        System.arraycopy(seconds, 0, times, 0, before);
        System.arraycopy(values, 0, all, 0, before);
        times[before] = second;
        all[before] = rounded(value);
        System.arraycopy(seconds, before, times, before + 1, size - before);
        System.arraycopy(values, before, all, before + 1, size - before);
        return thinned(times, all);
    }

    private static Series thinned(long[] times, double[] all) {
        long newest = times[times.length - 1];
        int kept = 0;
        long last = Long.MIN_VALUE;
        for (int i = 0; i < times.length; i++) {
            long age = newest - times[i];
            long step = age <= DENSE ? FINE : COARSE;
            // What is dense begins where what is coarse ends: the same grid, so that a sample that is kept stays.
            boolean first = last == Long.MIN_VALUE || Math.floorDiv(times[i], step) != Math.floorDiv(last, step);
            if (age <= SPAN.toSeconds() && first) {
                times[kept] = times[i];
                all[kept++] = all[i];
                last = times[i];
            }
        }
        return new Series(Arrays.copyOf(times, kept), Arrays.copyOf(all, kept));
    }

    private static double rounded(double value) {
        if (value == 0) {
            return 0;
        }
        double digits = DIGITS - Math.ceil(Math.log10(Math.abs(value)));
        double power = Math.pow(10, Math.abs(digits));
        double shifted = digits >= 0 ? value * power : value / power;
        double whole = Math.rint(shifted);
        double result = digits >= 0 ? whole / power : whole * power;
        return Double.isFinite(result) ? result : value;
    }

    public int size() {
        return seconds.length;
    }

    /** All of them, oldest first. */
    public List<Sample> samples() {
        return since(Instant.MIN);
    }

    /** Those at or after an instant, oldest first. */
    public List<Sample> since(Instant from) {
        var found = new ArrayList<Sample>();
        for (int i = 0; i < seconds.length; i++) {
            Instant at = Instant.ofEpochSecond(seconds[i]);
            if (!at.isBefore(from)) {
                found.add(new Sample(at, values[i]));
            }
        }
        return found;
    }

    /** The second since 1970 of each sample, oldest first. */
    public long[] seconds() {
        return seconds.clone();
    }

    /** The value of each sample, oldest first. */
    public double[] values() {
        return values.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Series series
                && Arrays.equals(seconds, series.seconds)
                && Arrays.equals(values, series.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(seconds) + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return seconds.length + " samples";
    }
}
