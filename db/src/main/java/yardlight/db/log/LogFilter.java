package yardlight.db.log;

import java.time.Instant;
import java.util.Optional;

/**
 * Which lines are asked for.
 *
 * @param from written at or after this instant
 * @param to written before this instant
 */
public record LogFilter(Optional<Instant> from, Optional<Instant> to, Optional<String> site, Optional<String> contact) {

    public static final LogFilter EVERYTHING =
            new LogFilter(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
