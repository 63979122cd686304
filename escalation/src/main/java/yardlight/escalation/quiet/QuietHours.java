package yardlight.escalation.quiet;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.walltime.WallTime;

/**
 * A daily span of local time in which notices below a priority are held. The start is part of it and the end is not; it
 * may cross midnight; it belongs to the day on which it starts. On the nights when the clock changes it is an hour
 * shorter or longer: what counts is what the clock on the wall says. A time that such a night leaves out is the first
 * moment after the gap; one that comes twice is the first of the two.
 *
 * @param lets the lowest priority that still gets through
 * @param startingOn days of the week on which it starts
 */
public record QuietHours(LocalTime from, LocalTime to, ZoneId zone, Priority lets, Set<DayOfWeek> startingOn) {

    public QuietHours {
        if (startingOn.isEmpty()) {
            throw new IllegalArgumentException("quiet hours must start on at least one day of the week: " + startingOn);
        }
        startingOn = Collections.unmodifiableSet(EnumSet.copyOf(startingOn));
        if (from.equals(to)) {
            throw new IllegalArgumentException("quiet hours must not start and end at the same time: " + from);
        }
    }

    /** Quiet hours of every night. */
    public static QuietHours daily(LocalTime from, LocalTime to, ZoneId zone, Priority lets) {
        return new QuietHours(from, to, zone, lets, EnumSet.allOf(DayOfWeek.class));
    }

    public boolean covers(Instant instant) {
        return spanAround(instant).isPresent();
    }

    /** Whether a notice of this priority waits at this instant. */
    public boolean holds(Priority priority, Instant instant) {
        return !priority.atLeast(lets) && covers(instant);
    }

    /** The end of the span that covers the instant, or the instant itself when none does. */
    public Instant endAfter(Instant instant) {
        return spanAround(instant).map(this::end).orElse(instant);
    }

    /** Every instant after {@code from} and before {@code to} at which what {@link #covers} says can change. */
    public Stream<Instant> changes(Instant from, Instant to) {
        LocalDate first = from.atZone(zone).toLocalDate().minusDays(2);
        LocalDate last = to.atZone(zone).toLocalDate().plusDays(1);
        return first.datesUntil(last)
                .filter(day -> startingOn.contains(day.getDayOfWeek()))
                .flatMap(day -> Stream.of(start(day), end(day)))
                .filter(change -> change.isAfter(from) && change.isBefore(to));
    }

    private Optional<LocalDate> spanAround(Instant instant) {
        LocalDate today = instant.atZone(zone).toLocalDate();
        for (LocalDate day : new LocalDate[] {today, today.minusDays(1)}) {
            if (startingOn.contains(day.getDayOfWeek())
                    && !instant.isBefore(start(day))
                    && instant.isBefore(end(day))) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    private Instant start(LocalDate day) {
        return WallTime.instant(day.atTime(from), zone);
    }

    private Instant end(LocalDate day) {
        LocalDate endDay = to.isAfter(from) ? day : day.plusDays(1);
        return WallTime.instant(endDay.atTime(to), zone);
    }
}
