package yardlight.escalation.trend;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * Measurements of one value, oldest first, no two at the same time. How far apart they are may change on the way: of what is
 * long ago less is kept.
 */
public record Series(List<Sample> samples) {

    public static final Series EMPTY = new Series(List.of());

    public Series {
        samples = List.copyOf(samples);
        for (int i = 1; i < samples.size(); i++) {
            if (!samples.get(i - 1).at().isBefore(samples.get(i).at())) {
                throw new IllegalArgumentException(
                        "samples must be in order of time: " + samples.get(i).at());
            }
        }
    }

    /** The samples from this instant on. */
    public Series from(Instant start) {
        int first = 0;
        while (first < samples.size() && samples.get(first).at().isBefore(start)) {
            first++;
        }
        return first == 0 ? this : new Series(samples.subList(first, samples.size()));
    }

    public boolean isEmpty() {
        return samples.isEmpty();
    }

    public int size() {
        return samples.size();
    }

    /** The newest; there must be one. */
    public Sample last() {
        return samples.get(samples.size() - 1);
    }

    /** The oldest; there must be one. */
    public Sample first() {
        return samples.get(0);
    }

    /** From the oldest to the newest. */
    public Duration length() {
        return isEmpty() ? Duration.ZERO : Duration.between(first().at(), last().at());
    }
}
