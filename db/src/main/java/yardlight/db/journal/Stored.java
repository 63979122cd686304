package yardlight.db.journal;

import java.time.Instant;
import java.util.Optional;

/**
 * What a transaction left behind that somebody may be waiting for.
 *
 * @param queued how many notices can be sent now
 * @param due the earliest time at which something that it wrote is due
 */
public record Stored(int queued, Optional<Instant> due) {}
