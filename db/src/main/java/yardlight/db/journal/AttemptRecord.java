package yardlight.db.journal;

import java.time.Instant;

/**
 * One attempt to hand a notice over.
 *
 * @param outcome {@code accepted}, {@code refused}, {@code deferred} or {@code unknown}
 * @param detail the words of the other side, or of the error; cut after 1000 characters
 */
public record AttemptRecord(String notice, Instant at, String channel, String outcome, String detail) {

    private static final int LONGEST = 1000;

    public AttemptRecord {
        detail = detail.length() <= LONGEST ? detail : detail.substring(0, LONGEST);
    }
}
