package yardlight.escalation.proof;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import yardlight.escalation.walltime.WallTime;

/**
 * When a contact is told that all is well: at a time on the clock on the wall, on some days of the week. A time that the
 * night of a change leaves out is the first moment after the gap; one that comes twice is the first of the two. So there
 * is one on each of its days, whatever the clock does.
 *
 * @param days at least one
 */
public record AllsWell(LocalTime at, ZoneId zone, Set<DayOfWeek> days) {

    public AllsWell {
        if (days.isEmpty()) {
            throw new IllegalArgumentException("days must name at least one day of the week: " + days);
        }
        days = Collections.unmodifiableSet(EnumSet.copyOf(days));
    }

    /** Every day. */
    public static AllsWell daily(LocalTime at, ZoneId zone) {
        return new AllsWell(at, zone, EnumSet.allOf(DayOfWeek.class));
    }

    /** The first time after the instant. */
    public Instant after(Instant instant) {
        // A zone may have moved the date on by a day: the one before is looked at as well.
        LocalDate day = date(instant).minusDays(1);
        while (!days.contains(day.getDayOfWeek()) || !on(day).isAfter(instant)) {
            day = day.plusDays(1);
        }
        return on(day);
    }

    /** The last time at the instant or before it. */
    public Instant latest(Instant instant) {
        LocalDate day = date(instant).plusDays(1);
        while (!days.contains(day.getDayOfWeek()) || on(day).isAfter(instant)) {
            day = day.minusDays(1);
        }
        return on(day);
    }

    private LocalDate date(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    private Instant on(LocalDate day) {
        return WallTime.instant(day.atTime(at), zone);
    }
}
