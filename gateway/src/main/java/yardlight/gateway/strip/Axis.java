package yardlight.gateway.strip;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import yardlight.db.reading.Sample;

/**
 * A scale of figures with marks at round ones.
 *
 * @param low its lower end, inclusive; below {@code high}
 * @param step from mark to mark; 1, 2 or 5 times a power of ten
 */
public record Axis(double low, double high, double step) {

    private static final double ROOM = 0.06;
    private static final double SMALLEST = 1e-6;

    /** One on which these have their place with a little room, with about so many marks, never three more. */
    public static Axis over(double lowest, double highest, int marks) {
        double size = Math.max(highest - lowest, Math.max(Math.abs(highest), Math.abs(lowest)) / 100);
        double span = Math.max(size, SMALLEST);
        double middle = (highest + lowest) / 2;
        double half = span * (0.5 + ROOM);
        return new Axis(middle - half, middle + half, step(2 * half, marks));
    }

    /** Over a curve, and over the limits that lie no farther from it than it is high. */
    public static Axis around(List<Sample> samples, List<Limit> limits, int marks) {
        double low = samples.stream().mapToDouble(Sample::min).min().orElse(0);
        double high = samples.stream().mapToDouble(Sample::max).max().orElse(1);
        double far = Math.max(high - low, Math.abs(high) / 4);
        List<Double> all = new ArrayList<>(List.of(low, high));
        limits.stream()
                .map(Limit::value)
                .filter(value -> value > low - far && value < high + far)
                .forEach(all::add);
        return over(Collections.min(all), Collections.max(all), marks);
    }

    private static double step(double span, int marks) {
        double least = span / (marks + 1);
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= least) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    public List<Double> marks() {
        var marks = new ArrayList<Double>();
        for (long n = (long) Math.ceil(low / step); n * step <= high; n++) {
            marks.add(n * step);
        }
        return marks;
    }

    /** A mark in words, with as many digits as the step has. */
    public String words(double mark) {
        int digits = (int) Math.max(0, Math.ceil(-Math.log10(step) - SMALLEST));
        return BigDecimal.valueOf(mark).setScale(digits, RoundingMode.HALF_UP).toPlainString();
    }

    /** How far up a figure stands: 0 at the lower end, 1 at the upper one, beyond them if it is beyond the scale. */
    public double up(double value) {
        return (value - low) / (high - low);
    }
}
