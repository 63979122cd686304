package yardlight.escalation.trend;

import java.util.Arrays;

/**
 * The straight line through points of which some are wrong: its slope is the median of the slopes of all pairs (Theil 1950,
 * Sen 1968). Up to 29 of 100 points may lie anywhere without moving it far.
 *
 * @param slope per unit of x
 * @param intercept the value at x = 0: the line passes through both medians
 * @param low the lower end of the interval for the slope
 * @param high its upper end
 */
public record TheilSen(double slope, double intercept, double low, double high) {

    /**
     * Fits. The interval is Sen's, by the normal approximation and with his correction for values that come twice; it takes
     * the deviations for independent of each other.
     *
     * @param x rising, without repeats
     * @param y as many, at least two
     * @param z how wide the interval is in standard deviations: 1.96 for 95 of 100
     */
    public static TheilSen fit(double[] x, double[] y, double z) {
        int n = x.length;
        if (n < 2 || y.length != n) {
            throw new IllegalArgumentException("a line must have two points or more: " + n + " and " + y.length);
        }
        var slopes = new double[n * (n - 1) / 2];
        int next = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                slopes[next++] = (y[j] - y[i]) / (x[j] - x[i]);
            }
        }
        Arrays.sort(slopes);
        double slope = Medians.ofSorted(slopes);
        double reach = z * Math.sqrt(variance(y));
        int low = (int) Math.rint((slopes.length - reach) / 2) - 1;
        int high = (int) Math.rint((slopes.length + reach) / 2);
        return new TheilSen(
                slope,
                Medians.of(y) - slope * Medians.of(x),
                slopes[Math.max(0, low)],
                slopes[Math.min(slopes.length - 1, high)]);
    }

    /** Of the number of rising pairs less that of falling ones, if there were no slope. */
    private static double variance(double[] y) {
        double[] sorted = y.clone();
        Arrays.sort(sorted);
        double variance = pairs(sorted.length);
        int run = 1;
        for (int i = 1; i <= sorted.length; i++) {
            if (i < sorted.length && sorted[i] == sorted[i - 1]) {
                run++;
            } else {
                variance -= pairs(run);
                run = 1;
            }
        }
        return variance;
    }

    private static double pairs(int n) {
        return n * (n - 1.0) * (2.0 * n + 5) / 18;
    }

    /** The value of the line. */
    public double at(double x) {
        return intercept + slope * x;
    }
}
