package yardlight.db.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * Takes the samples of a stretch of time one after the other, and makes at most so many of them: when there are more, all that
 * lie in the same part of the stretch become one. Holds never more than it gives out.
 */
final class Stretch {

    private final Instant from;
    private final Instant to;
    private final int most;
    private final long part;
    private final List<Sample> singles = new ArrayList<>();
    private final TreeMap<Long, Sample> parts = new TreeMap<>();

    /**
     * @param from inclusive
     * @param to exclusive
     * @param most at least 1
     */
    Stretch(Instant from, Instant to, int most) {
        this.from = from;
        this.to = to;
        this.most = most;
        long length = Math.max(1, Duration.between(from, to).toMillis());
        this.part = Math.max(1, (length + most - 1) / most);
    }

    void add(Sample sample) {
        if (sample.at().isBefore(from) || !sample.at().isBefore(to)) {
            return;
        }
        if (parts.isEmpty() && singles.size() < most) {
            singles.add(sample);
            return;
        }
        singles.forEach(this::put);
        singles.clear();
        put(sample);
    }

    private void put(Sample sample) {
        long number = Duration.between(from, sample.at()).toMillis() / part;
        parts.merge(number, sample, (one, other) -> Sample.of(from.plusMillis(number * part), List.of(one, other)));
    }

    List<Sample> samples() {
        if (parts.isEmpty()) {
            singles.sort(Comparator.comparing(Sample::at));
            return List.copyOf(singles);
        }
        return List.copyOf(parts.values());
    }
}
