package yardlight.escalation.trend;

import java.util.Arrays;

/** The middle of numbers, and how far they usually lie from it. */
public final class Medians {

    /** What makes a median deviation comparable to a standard deviation, for deviations of the normal kind. */
    private static final double NORMAL = 1.4826;

    private Medians() {}

    /** The middle one, or the mean of the middle two; at least one number. */
    public static double of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return ofSorted(sorted);
    }

    static double ofSorted(double[] sorted) {
        int n = sorted.length;
        if (n == 0) {
            throw new IllegalArgumentException("a median must have numbers: none");
        }
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }

    /** The median distance from the median, made comparable to a standard deviation. */
    public static double deviation(double[] values) {
        double middle = of(values);
        return NORMAL
                * of(Arrays.stream(values)
                        .map(value -> Math.abs(value - middle))
                        .toArray());
    }
}
