package yardlight.escalation.trend;

import java.util.List;

/**
 * How a value moves about its own line, told apart by how far apart one looks: noise of the sensor is the same at any
 * distance, what comes and goes in slugs adds up with it.
 */
final class Lags {

    /** Distances, as parts of the whole: short enough to come often, long enough for slugs to add up. */
    private static final int[] PARTS = {24, 12, 6, 4};

    private final List<Sample> samples;
    private final double noise;

    private Lags(List<Sample> samples, double noise) {
        this.samples = samples;
        this.noise = noise;
    }

    static Lags of(Series series) {
        return new Lags(series.samples(), noise(series.samples()));
    }

    /** By how far a sample usually lies off the line between its neighbours, in which neither a slope nor a rare slug shows. */
    private static double noise(List<Sample> samples) {
        if (samples.size() < 3) {
            return 0;
        }
        var bends = new double[samples.size() - 2];
        for (int i = 0; i < bends.length; i++) {
            Sample before = samples.get(i);
            Sample one = samples.get(i + 1);
            Sample after = samples.get(i + 2);
            double share = Trend.hours(before.at(), one.at()) / Trend.hours(before.at(), after.at());
            double off = one.value() - before.value() * (1 - share) - after.value() * share;
            bends[i] = off / Math.sqrt(1 + share * share + (1 - share) * (1 - share));
        }
        return Medians.deviation(bends);
    }

    double noise() {
        return noise;
    }

    /** The variance that each hour adds beside a steady rate, in units squared an hour: the largest of what the distances say. */
    double walk(double rate) {
        double length =
                Trend.hours(samples.get(0).at(), samples.get(samples.size() - 1).at());
        double most = 0;
        for (int part : PARTS) {
            most = Math.max(most, walk(rate, length / part));
        }
        return most;
    }

    private double walk(double rate, double lag) {
        double squares = 0;
        double hours = 0;
        int to = 0;
        for (Sample from : samples) {
            while (to < samples.size() && Trend.hours(from.at(), samples.get(to).at()) < lag) {
                to++;
            }
            if (to < samples.size()) {
                double apart = Trend.hours(from.at(), samples.get(to).at());
                double off = samples.get(to).value() - from.value() - rate * apart;
                squares += off * off - 2 * noise * noise;
                hours += apart;
            }
        }
        return hours > 0 ? squares / hours : 0;
    }
}
