package yardlight.escalation.setup;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.quiet.QuietHours;

/**
 * A person who can be called.
 *
 * @param lines ways to reach them, best first
 * @param quiet when they are left alone, in their own zone
 * @param textsPerHour how many texts they get in any hour before the rest arrives bundled; critical ones always get
 *     through
 */
public record Contact(
        String id,
        String name,
        ZoneId zone,
        Language language,
        List<Line> lines,
        List<QuietHours> quiet,
        int textsPerHour) {

    public Contact {
        lines = List.copyOf(lines);
        quiet = List.copyOf(quiet);
        if (textsPerHour < 1) {
            throw new IllegalArgumentException("textsPerHour must be at least 1: " + textsPerHour);
        }
    }

    /** The end of the quiet hours that hold a notice of this priority at this instant; empty when it may go now. */
    public Optional<Instant> heldUntil(Priority priority, Instant now) {
        Instant end = now;
        boolean moved = true;
        while (moved) {
            moved = false;
            for (QuietHours hours : quiet) {
                if (hours.holds(priority, end)) {
                    end = hours.endAfter(end);
                    moved = true;
                }
            }
            if (end.isAfter(now.plus(java.time.Duration.ofDays(8)))) {
                return Optional.of(end);
            }
        }
        return end.equals(now) ? Optional.empty() : Optional.of(end);
    }
}
