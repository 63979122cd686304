package yardlight.escalation.trend;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One figure of each of the last times that something went on, such as how fast a level fell while a pump ran.
 *
 * @param start when the present time began
 * @param present its figure so far; empty when there is none yet
 * @param earlier those of the times before, oldest first, at most {@link #KEPT}
 */
public record Remembered(Instant start, Optional<Double> present, List<Double> earlier) {

    public static final int KEPT = 14;

    /** With fewer times nothing is usual. */
    private static final int FEWEST = 3;

    public static final Remembered NOTHING = new Remembered(Instant.EPOCH, Optional.empty(), List.of());

    public Remembered {
        earlier = List.copyOf(earlier);
    }

    /** As {@link #numbers} gave them. */
    public static Remembered of(List<Double> numbers) {
        if (numbers.isEmpty()) {
            return NOTHING;
        }
        boolean has = numbers.get(1) > 0;
        return new Remembered(
                Instant.ofEpochSecond(numbers.get(0).longValue()),
                has ? Optional.of(numbers.get(2)) : Optional.empty(),
                numbers.subList(has ? 3 : 2, numbers.size()));
    }

    /** The start, whether there is a present figure, that figure, and the earlier ones: how a gauge remembers them. */
    public List<Double> numbers() {
        var numbers = new ArrayList<Double>();
        numbers.add((double) start.getEpochSecond());
        numbers.add(present.isPresent() ? 1.0 : 0.0);
        present.ifPresent(numbers::add);
        numbers.addAll(earlier);
        return numbers;
    }

    /** With a newer figure of the time that began then; what the time before came to is kept. */
    public Remembered with(Instant began, double figure) {
        var kept = new ArrayList<>(earlier);
        if (start.getEpochSecond() != began.getEpochSecond()) {
            present.ifPresent(kept::add);
        }
        return new Remembered(began, Optional.of(figure), kept.subList(Math.max(0, kept.size() - KEPT), kept.size()));
    }

    /** What is usual, the present time not counted; empty while there are too few. */
    public OptionalDouble usual() {
        return earlier.size() < FEWEST
                ? OptionalDouble.empty()
                : OptionalDouble.of(Medians.of(
                        earlier.stream().mapToDouble(Double::doubleValue).toArray()));
    }
}
