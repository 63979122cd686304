package yardlight.db.journal;

import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.alarm.Report;

/**
 * An event as it was posted, and what it did.
 *
 * @param id the box's own name for it
 * @param alarm id of the occurrence that it belongs to
 */
public record PostedRecord(
        String box, Optional<String> id, Report report, Instant receivedAt, Outcome outcome, Optional<String> alarm) {

    /** What a box and its own name for an event are looked up by. */
    public static String name(String box, String id) {
        return box + " " + id;
    }
}
