package yardlight.escalation.runtime;

import java.util.Optional;
import yardlight.escalation.trend.Medians;

/**
 * A share of the day against those of earlier days.
 *
 * @param share of the last 24 hours, from 0 to 1
 * @param usual the median of the earlier days
 * @param deviation by how much days usually differ, as a standard deviation and at least {@link #STEADIEST}
 * @param days how many earlier days there were
 */
public record Comparison(double share, double usual, double deviation, int days) {

    /** With fewer earlier days nothing is usual. */
    public static final int FEWEST = 5;

    /** Days that are alike by chance are not alike by so much: 2 of 100 of the day. */
    static final double STEADIEST = 0.02;

    static Optional<Comparison> of(double share, double[] earlier) {
        if (earlier.length < FEWEST) {
            return Optional.empty();
        }
        double deviation = Math.max(STEADIEST, Medians.deviation(earlier));
        return Optional.of(new Comparison(share, Medians.of(earlier), deviation, earlier.length));
    }

    /** Below this share it runs less than usual, unless that is below 0. */
    public double low(Unusual unusual) {
        return usual - unusual.by(deviation);
    }

    /** Above this share it runs more than usual. */
    public double high(Unusual unusual) {
        return usual + unusual.by(deviation);
    }
}
