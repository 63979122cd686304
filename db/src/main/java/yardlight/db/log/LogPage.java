package yardlight.db.log;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Lines of the log, newest first.
 *
 * @param next the line before which the next page begins; empty when there are none further back
 * @param searchedTo back to when was looked, if there may be more further back although the page is not full
 */
public record LogPage(List<LogLine> lines, Optional<Long> next, Optional<Instant> searchedTo) {
    public LogPage {
        lines = List.copyOf(lines);
    }
}
