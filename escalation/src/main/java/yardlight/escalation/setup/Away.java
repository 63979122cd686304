package yardlight.escalation.setup;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import yardlight.escalation.walltime.WallTime;

/**
 * A time in which a contact is away. They are not asked to take a turn then, and a turn of theirs then is pointed out. It takes
 * nobody off a ladder by itself: a mistake in a calendar must not leave a site with nobody.
 *
 * @param from start, inclusive, local to the contact's zone
 * @param to end, exclusive
 * @param words why; may be empty
 * @param imported whether it comes from a calendar, of which the next import replaces it
 */
public record Away(LocalDateTime from, LocalDateTime to, String words, boolean imported) {

    public Away {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("being away must end after it starts: " + from + " to " + to);
        }
    }

    /** Whether any of it lies between the two instants. */
    public boolean overlaps(Instant start, Instant end, ZoneId zone) {
        return WallTime.instant(from, zone).isBefore(end) && start.isBefore(WallTime.instant(to, zone));
    }
}
