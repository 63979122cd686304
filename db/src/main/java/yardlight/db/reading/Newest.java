package yardlight.db.reading;

import java.time.Instant;
import java.util.Optional;

/**
 * What a point measured last.
 *
 * @param unit in which it is stored
 * @param value of the reading; the mean of a step once readings are summed up
 */
public record Newest(String point, Optional<String> unit, Instant at, double value) {}
