package yardlight.escalation.trend;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The largest drops that a value ever had within its while, largest first.
 *
 * @param since from when on they are kept; empty before the first reading
 * @param falls at most {@link #KEPT}, at least an hour apart
 */
public record FastestFalls(Optional<Instant> since, List<Fall> falls) {

    public record Fall(Instant at, double by) {}

    public static final FastestFalls NONE = new FastestFalls(Optional.empty(), List.of());

    public static final int KEPT = 8;

    private static final Duration APART = Duration.ofHours(1);

    public FastestFalls {
        falls = List.copyOf(falls);
    }

    /** As {@link #numbers} gave them. */
    public static FastestFalls of(List<Double> numbers) {
        if (numbers.isEmpty()) {
            return NONE;
        }
        var falls = new ArrayList<Fall>();
        for (int i = 1; i + 1 < numbers.size(); i += 2) {
            falls.add(new Fall(Instant.ofEpochSecond(numbers.get(i).longValue()), numbers.get(i + 1)));
        }
        return new FastestFalls(Optional.of(Instant.ofEpochSecond(numbers.get(0).longValue())), falls);
    }

    /** Since when, and of each its time and size: how a gauge remembers them. */
    public List<Double> numbers() {
        var numbers = new ArrayList<Double>();
        since.ifPresent(start -> numbers.add((double) start.getEpochSecond()));
        falls.forEach(fall -> {
            numbers.add((double) fall.at().getEpochSecond());
            numbers.add(fall.by());
        });
        return numbers;
    }

    /**
     * With a drop that was seen now; it and those of the hour before are one, at the time of the largest. That time stays when
     * smaller ones follow: else a pressure that is read each minute would never have had a fall an hour ago.
     */
    public FastestFalls plus(Instant at, double by) {
        var kept = new ArrayList<Fall>();
        Fall largest = new Fall(at, by);
        for (Fall fall : falls) {
            if (Duration.between(fall.at(), at).abs().compareTo(APART) >= 0) {
                kept.add(fall);
            } else if (fall.by() >= largest.by()) {
                largest = fall;
            }
        }
        kept.add(largest);
        kept.sort(Comparator.comparingDouble(Fall::by).reversed());
        return new FastestFalls(since.or(() -> Optional.of(at)), kept.subList(0, Math.min(KEPT, kept.size())));
    }

    /** The largest that was over an hour before this; 0 when there is none. One that still goes on is no measure of itself. */
    public double largestBefore(Instant at) {
        return falls.stream()
                .filter(fall -> !fall.at().isAfter(at.minus(APART)))
                .mapToDouble(Fall::by)
                .max()
                .orElse(0);
    }

    /** Without those of the hour before this: they turned out to be a leak, which is not to be got used to. */
    public FastestFalls forgetting(Instant at) {
        return new FastestFalls(
                since,
                falls.stream()
                        .filter(fall -> !fall.at().isAfter(at.minus(APART)))
                        .toList());
    }

    /** Whether they have been kept for so long. */
    public boolean keptFor(Duration span, Instant now) {
        return since.filter(start -> !start.plus(span).isAfter(now)).isPresent();
    }
}
