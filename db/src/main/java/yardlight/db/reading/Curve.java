package yardlight.db.reading;

import java.util.List;
import java.util.Optional;

/**
 * A stretch of a series.
 *
 * @param unit in which it is stored
 * @param samples in the order of time
 */
public record Curve(Optional<String> unit, List<Sample> samples) {

    public static final Curve NONE = new Curve(Optional.empty(), List.of());

    public Curve {
        samples = List.copyOf(samples);
    }
}
