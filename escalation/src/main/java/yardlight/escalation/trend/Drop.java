package yardlight.escalation.trend;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * How far a value has come down from the highest that it was in a while, with each taken as the middle of three readings, so
 * that a single wrong one is no drop.
 *
 * @param top the highest
 * @param now the newest
 */
public record Drop(double top, double now) {

    private static final int MIDDLE = 3;

    /** The drop at the end of a series; empty when the while has too few readings. */
    public static Optional<Drop> within(Duration span, Series series) {
        if (series.isEmpty()) {
            return Optional.empty();
        }
        List<Sample> samples = series.from(series.last().at().minus(span)).samples();
        if (samples.size() < MIDDLE) {
            return Optional.empty();
        }
        double top = Double.NEGATIVE_INFINITY;
        double now = 0;
        for (int i = MIDDLE; i <= samples.size(); i++) {
            now = Medians.of(samples.subList(i - MIDDLE, i).stream()
                    .mapToDouble(Sample::value)
                    .toArray());
            top = Math.max(top, now);
        }
        return Optional.of(new Drop(top, now));
    }

    /** 0 or more. */
    public double by() {
        return top - now;
    }
}
