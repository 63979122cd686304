package yardlight.gateway.lane;

import java.util.List;
import java.util.Optional;
import yardlight.db.journal.AttemptRecord;
import yardlight.db.journal.Retry;
import yardlight.escalation.Entry;
import yardlight.escalation.Stimulus;

/**
 * What came of one attempt to send a notice; stored as a whole.
 *
 * @param attempt for the record
 * @param fate what the engine is told; empty while the notice is still under way
 * @param retry when it is sent again
 * @param entries for the log, beyond what the engine writes
 */
public record Tried(
        AttemptRecord attempt, Optional<Stimulus.NoticeFate> fate, Optional<Retry> retry, List<Entry> entries) {
    public Tried {
        entries = List.copyOf(entries);
    }
}
