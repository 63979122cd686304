package yardlight.escalation.trend;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a value stands and how fast it goes, over the longest look back that does not contradict the newest readings.
 *
 * @param at time of the newest sample
 * @param value at that time, by the samples around it, in the unit of the value
 * @param rate in units an hour, below 0 when it falls
 * @param spread the standard deviation of {@code rate}, in units an hour
 * @param noise the standard deviation of one sample about the true value
 * @param walk how unsteadily it goes: the variance that each hour adds, in units squared an hour
 * @param over how far back the line looks
 * @param samples how many it lies through
 */
public record Trend(
        Instant at, double value, double rate, double spread, double noise, double walk, Duration over, int samples) {

    /**
     * Standard deviations to each side of an interval that is to hold in 9 cases of 10: more than the 1.645 of a textbook, because
     * inflows do what their past does not show. Chosen by the study.
     */
    public static final double Z = 2;

    /** A line through fewer samples than this says little. */
    public static final int FEWEST = 6;

    /** What is longer ago says nothing about the next hours, as long as there are enough samples since. */
    private static final Duration LONGEST = Duration.ofHours(4);

    private static final int ENOUGH = 12;

    /** The shortest look back. */
    private static final Duration SHORTEST = Duration.ofMinutes(15);

    /** By how much two looks back may disagree, in standard deviations of both, before the longer one is given up. */
    private static final double DISAGREE = 1.5;

    /** And by so much of themselves, which is no change that anybody cares for. */
    private static final double ALIKE = 0.05;

    /**
     * The trend at the end of a series in which the value goes one way; empty when there are too few samples.
     *
     * <p>Looks back 15 minutes first, or as far as six samples reach, then twice as far, as long as the slopes agree: a
     * fresh change is seen at once and a steady rise is measured over all of it (the rule of intersecting intervals,
     * Goldenshluger and Nemirovski 1997).
     */
    public static Optional<Trend> of(Series series) {
        if (series.size() < FEWEST) {
            return Optional.empty();
        }
        Series stretch = recent(series);
        List<Sample> all = stretch.samples();
        Instant newest = stretch.last().at();
        Duration back =
                longer(SHORTEST, Duration.between(all.get(all.size() - FEWEST).at(), newest));
        Line chosen = Line.of(stretch.from(newest.minus(back)));
        var tried = new ArrayList<>(List.of(chosen.trend(Lags.of(chosen.series()))));
        while (back.compareTo(stretch.length()) < 0) {
            back = back.multipliedBy(2);
            Line farther = Line.of(stretch.from(newest.minus(back)));
            Trend next = farther.trend(Lags.of(chosen.series()));
            if (!tried.stream().allMatch(next::agrees)) {
                break;
            }
            tried.add(next);
            chosen = farther;
        }
        // How unsteady it is shows best over all of it, the past that was given up included.
        return Optional.of(chosen.trend(Lags.of(stretch)));
    }

    private static Series recent(Series series) {
        Series recent = series.from(series.last().at().minus(LONGEST));
        return recent.size() < ENOUGH ? series : recent;
    }

    private static Duration longer(Duration one, Duration other) {
        return one.compareTo(other) > 0 ? one : other;
    }

    private boolean agrees(Trend other) {
        double same = ALIKE * Math.abs(other.rate) + DISAGREE * (spread + other.spread);
        return Math.abs(rate - other.rate) <= same;
    }

    /** A line through a series, whose x are hours before its newest sample. */
    private record Line(Series series, double[] x, double[] y, TheilSen fit) {

        static Line of(Series series) {
            Instant newest = series.last().at();
            double[] x = series.samples().stream()
                    .mapToDouble(one -> hours(newest, one.at()))
                    .toArray();
            double[] y = series.samples().stream().mapToDouble(Sample::value).toArray();
            return new Line(series, x, y, TheilSen.fit(x, y, Z));
        }

        Trend trend(Lags lags) {
            double slope = fit.slope();
            double walk = lags.walk(slope);
            // Sen's interval takes deviations for independent; those of a walk are not, and cost 6/5 of its variance
            // over the length.
            double own = (fit.high() - fit.low()) / (2 * Z);
            double spread = Math.sqrt(own * own + 1.2 * walk / -x[0]);
            return new Trend(
                    series.last().at(), now(), slope, spread, lags.noise(), walk, series.length(), series.size());
        }

        /** The middle of the newest five, each carried on to the newest. */
        private double now() {
            var carried = new double[Math.min(5, x.length)];
            for (int i = 0; i < carried.length; i++) {
                int one = x.length - 1 - i;
                carried[i] = y[one] - fit.slope() * x[one];
            }
            return Medians.of(carried);
        }
    }

    static double hours(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 3_600_000.0;
    }

    /** The slowest that it may be going. */
    public double slowest() {
        return rate - Z * spread;
    }

    /** The fastest that it may be going. */
    public double fastest() {
        return rate + Z * spread;
    }
}
