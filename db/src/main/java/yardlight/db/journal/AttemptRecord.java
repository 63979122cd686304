package yardlight.db.journal;

import java.time.Instant;
import java.util.Optional;

/**
 * One attempt to hand a notice over.
 *
 * @param line index of the contact's line that it went to
 * @param outcome {@code accepted}, {@code refused}, {@code deferred} or {@code unknown}
 * @param detail the words of the other side, or of the error; cut after 1000 characters
 * @param reference what the other side calls the message, if it will say later what became of it; at most 300 characters
 */
public record AttemptRecord(
        String notice,
        Instant at,
        String channel,
        int line,
        String outcome,
        String detail,
        Optional<String> reference) {

    private static final int LONGEST = 1000;
    private static final int LONGEST_REFERENCE = 300;

    public AttemptRecord {
        detail = detail.length() <= LONGEST ? detail : detail.substring(0, LONGEST);
        reference = reference.filter(name -> name.length() <= LONGEST_REFERENCE);
    }
}
