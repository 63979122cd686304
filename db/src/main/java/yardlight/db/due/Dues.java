package yardlight.db.due;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Hands out what is due, each thing to one claimer. What it costs grows with what is claimed, not with what is stored.
 * A claim whose claimer dies comes back after a short lease, or when the gateway starts again.
 */
public interface Dues {

    /** Claims up to so many of the things that are due at or before {@code now}, the longest overdue first. */
    List<Due> claim(Instant now, int limit);

    /** The writer has done these: what they are due at next, if at all, is written anew. */
    void done(Collection<DueKey> keys);

    /** These were not done: they may be claimed again at once. */
    void giveBack(Collection<DueKey> keys);

    /** The first time after {@code now} at which there is something to claim. */
    Optional<Instant> next(Instant now);
}
