package yardlight.escalation.setup;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.quiet.QuietHours;

/**
 * A person who can be called.
 *
 * @param lines ways to reach them, best first
 * @param quiet when they are left alone, in their own zone
 * @param textsPerHour how many texts they get in any hour before the rest arrives bundled; critical ones always get
 *     through
 * @param allsWell when they are told that all is well
 * @param away when they are not to be asked for anything
 */
public record Contact(
        String id,
        String name,
        ZoneId zone,
        Language language,
        List<Line> lines,
        List<QuietHours> quiet,
        int textsPerHour,
        Optional<AllsWell> allsWell,
        List<Away> away) {

    /** A week with a change of the clock in it: what has no end within it has none. */
    private static final Duration LONGEST = Duration.ofDays(8);

    public Contact {
        lines = List.copyOf(lines);
        quiet = List.copyOf(quiet);
        away = List.copyOf(away);
        if (textsPerHour < 1) {
            throw new IllegalArgumentException("textsPerHour must be at least 1: " + textsPerHour);
        }
    }

    /** Somebody who is never away. */
    public Contact(
            String id,
            String name,
            ZoneId zone,
            Language language,
            List<Line> lines,
            List<QuietHours> quiet,
            int textsPerHour,
            Optional<AllsWell> allsWell) {
        this(id, name, zone, language, lines, quiet, textsPerHour, allsWell, List.of());
    }

    /** Somebody who is not told that all is well. */
    public Contact(
            String id,
            String name,
            ZoneId zone,
            Language language,
            List<Line> lines,
            List<QuietHours> quiet,
            int textsPerHour) {
        this(id, name, zone, language, lines, quiet, textsPerHour, Optional.empty());
    }

    /**
     * The end of the quiet hours that hold a notice of this priority at this instant, through all that follow without a
     * break; empty when it may go now. Quiet hours that leave no moment of the week free have no end: then it is an
     * instant more than eight days away, at which to ask again.
     */
    public Optional<Instant> heldUntil(Priority priority, Instant now) {
        return heldUntil(priority, now, now.plus(LONGEST));
    }

    /**
     * The same for somebody who looks further ahead.
     *
     * @param far quiet hours that go on without a break until after this instant have no end
     */
    public Optional<Instant> heldUntil(Priority priority, Instant now, Instant far) {
        Instant end = now;
        Optional<Instant> later = endAfter(priority, now);
        while (later.isPresent() && !end.isAfter(far)) {
            end = later.get();
            later = endAfter(priority, end);
        }
        return end.equals(now) ? Optional.empty() : Optional.of(end);
    }

    /** When they are away between the two instants. */
    public List<Away> away(Instant from, Instant to) {
        return away.stream().filter(one -> one.overlaps(from, to, zone)).toList();
    }

    private Optional<Instant> endAfter(Priority priority, Instant instant) {
        return quiet.stream()
                .filter(hours -> hours.holds(priority, instant))
                .map(hours -> hours.endAfter(instant))
                .max(Comparator.naturalOrder());
    }
}
