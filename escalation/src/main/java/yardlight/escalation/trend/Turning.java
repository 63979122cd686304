package yardlight.escalation.trend;

import java.time.Instant;
import java.util.List;

/**
 * Where a value last turned from rising to falling or back: the last peak or trough from which it has come away by more
 * than noise explains. What lies before such a turn says nothing about the way it goes now.
 */
public final class Turning {

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
        double[] values = smooth(samples);
        int turn = 0;
        int high = 0;
        int low = 0;
        int way = 0;
        for (int i = 1; i < values.length; i++) {
            high = values[i] >= values[high] ? i : high;
            low = values[i] <= values[low] ? i : low;
            boolean falls = way >= 0 && values[high] - values[i] > least;
            boolean rises = way <= 0 && values[i] - values[low] > least;
            if (falls || rises) {
                turn = way == 0 ? turn : falls ? high : low;
                way = falls ? -1 : 1;
                high = i;
                low = i;
            }
        }
        return samples.get(turn).at();
    }

    /** Each the middle of itself and its neighbours: a single wrong reading is no peak. */
    private static double[] smooth(List<Sample> samples) {
        double[] raw = samples.stream().mapToDouble(Sample::value).toArray();
        double[] smooth = raw.clone();
        for (int i = 1; i + 1 < raw.length; i++) {
            double least = Math.min(raw[i - 1], raw[i + 1]);
            double most = Math.max(raw[i - 1], raw[i + 1]);
            smooth[i] = Math.max(least, Math.min(most, raw[i]));
        }
        return smooth;
    }
}
