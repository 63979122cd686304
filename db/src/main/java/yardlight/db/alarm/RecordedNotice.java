package yardlight.db.alarm;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.notice.Notice;

/**
 * A notice with what became of it.
 *
 * @param channel the one that is tried, or was tried last; empty before it is queued, and when the contact has no line
 * @param attempts oldest first
 */
public record RecordedNotice(
        Notice notice,
        Optional<String> channel,
        Optional<Instant> handedOverAt,
        Optional<Instant> deliveredAt,
        List<RecordedAttempt> attempts) {
    public RecordedNotice {
        attempts = List.copyOf(attempts);
    }
}
