package yardlight.db.log;

import java.time.Instant;
import java.util.Optional;

/**
 * Which lines are asked for.
 *
 * @param from written at or after this instant
 * @param to written before this instant
 * @param what one kind, in the words of {@code Entry.What}
 */
public record LogFilter(
        Optional<Instant> from,
        Optional<Instant> to,
        Optional<String> site,
        Optional<String> contact,
        Optional<String> what) {

    public static final LogFilter EVERYTHING =
            new LogFilter(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Of whatever kind. */
    public LogFilter(Optional<Instant> from, Optional<Instant> to, Optional<String> site, Optional<String> contact) {
        this(from, to, site, contact, Optional.empty());
    }

    /** Whether few of the lines that an index leads to may fit. */
    boolean sparse() {
        return what.isPresent() || site.isPresent() && contact.isPresent();
    }
}
