package yardlight.db.alarm;

import java.time.Instant;

/**
 * One attempt to hand a notice over.
 *
 * @param outcome {@code accepted}, {@code refused}, {@code deferred} or {@code unknown}
 * @param detail the words of the other side, or of the error
 */
public record RecordedAttempt(Instant at, String channel, String outcome, String detail) {}
