package yardlight.demo.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The arithmetic of the measurements. */
final class Figures {

    private Figures() {}

    /** The middle one; of an even number the mean of the two in the middle. */
    static double median(double... values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("median must have values");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /**
     * The smallest value that at least this share of all values does not exceed (nearest rank).
     *
     * @param share above 0, up to 1
     */
    static long percentile(long[] values, double share) {
        if (values.length == 0 || share <= 0 || share > 1) {
            throw new IllegalArgumentException("percentile must be of values and within (0, 1]: " + share);
        }
        long[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.ceil(share * sorted.length) - 1];
    }

    /** How much {@code y} grows with each unit of {@code x}, by least squares; 0 for less than two points. */
    static double slope(List<Double> x, List<Double> y) {
        double meanX = x.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        double meanY = y.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        double both = 0;
        double square = 0;
        for (int i = 0; i < x.size(); i++) {
            both += (x.get(i) - meanX) * (y.get(i) - meanY);
            square += (x.get(i) - meanX) * (x.get(i) - meanX);
        }
        return square == 0 ? 0 : both / square;
    }

    /** A number as one would write it down: whole from 100 on, one decimal from 10 on, else two. */
    static String written(double value) {
        if (Math.abs(value) >= 100) {
            return String.format(Locale.US, "%,.0f", value);
        }
        return String.format(Locale.US, Math.abs(value) >= 10 ? "%.1f" : "%.2f", value);
    }

    static double millis(double nanos) {
        return nanos / 1_000_000;
    }
}
