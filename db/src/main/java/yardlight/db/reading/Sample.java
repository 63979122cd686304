package yardlight.db.reading;

import java.time.Instant;
import java.util.Collection;

/**
 * One reading, or several in one.
 *
 * @param at of the reading; of several the beginning of their step
 * @param min smallest, in the unit of the series
 * @param max largest
 * @param mean of all, each counting the same however long it held
 * @param count how many readings, at least 1
 */
public record Sample(Instant at, double min, double max, double mean, int count) {

    public static Sample one(Instant at, double value) {
        return new Sample(at, value, value, value, 1);
    }

    /** All of these in one; there must be at least one. */
    static Sample of(Instant at, Collection<Sample> samples) {
        double min = Double.POSITIVE_INFINITY;
        double max = Double.NEGATIVE_INFINITY;
        double sum = 0;
        int count = 0;
        for (Sample one : samples) {
            min = Math.min(min, one.min);
            max = Math.max(max, one.max);
            sum += one.mean * one.count;
            count += one.count;
        }
        return new Sample(at, min, max, sum / count, count);
    }

    Sample withMean(double other) {
        return new Sample(at, min, max, other, count);
    }
}
