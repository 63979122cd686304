package yardlight.escalation.trend;

import java.time.Instant;
import java.util.List;

/**
 * Where a value last turned from rising to falling or back: the last peak or trough from which it has come away by more
 * than noise explains. What lies before such a turn says nothing about the way it goes now.
 */
public final class Turning {

    /** A middle of three passes over a single wrong reading. */
    private static final int AROUND = 1;

    /** Nor do this many standard deviations of noise, from the smoothed peak to a smoothed reading. */
    private static final double NOISE = 6;

    private Turning() {}

    /**
     * The series from its last turn on.
     *
     * @param least how far it has to come away from a peak or trough, in the unit of the value; above 0
     */
    public static Series stretch(Series series, double least) {
        double noise = Lags.of(series).noise();
        return series.isEmpty() ? series : series.from(last(series.samples(), Math.max(least, NOISE * noise)));
    }

    private static Instant last(List<Sample> samples, double least) {
        int turn = 0;
        int high = 0;
        int low = 0;
        int way = 0;
        for (int i = 1; i < samples.size(); i++) {
            double value = smooth(samples, i);
            high = value >= smooth(samples, high) ? i : high;
            low = value <= smooth(samples, low) ? i : low;
            boolean falls = way >= 0 && smooth(samples, high) - value > least;
            boolean rises = way <= 0 && value - smooth(samples, low) > least;
            if (falls || rises) {
                turn = way == 0 ? turn : falls ? high : low;
                way = falls ? -1 : 1;
                high = i;
                low = i;
            }
        }
        return samples.get(turn).at();
    }

    private static double smooth(List<Sample> samples, int i) {
        int from = Math.max(0, i - AROUND);
        int to = Math.min(samples.size(), i + AROUND + 1);
        return Medians.of(
                samples.subList(from, to).stream().mapToDouble(Sample::value).toArray());
    }
}
