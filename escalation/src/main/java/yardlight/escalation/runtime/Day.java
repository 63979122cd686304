package yardlight.escalation.runtime;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * How something ran on one calendar day at its site.
 *
 * @param on how long it ran
 * @param known for how much of the day that is known; up to 23, 24 or 25 hours
 * @param starts how often it came on
 * @param longest the longest run, as far as it lies in the day
 */
public record Day(LocalDate date, Duration on, Duration known, int starts, Duration longest) {

    /** Of this much of a day the signal has to be known, in hours, before the day says anything about other days. */
    static final int ENOUGH = 20;

    static Day empty(LocalDate date) {
        return new Day(date, Duration.ZERO, Duration.ZERO, 0, Duration.ZERO);
    }

    /** How long the day lasts there: 23 and 25 hours when the clock is changed. */
    static Duration length(LocalDate date, ZoneId zone) {
        return Duration.between(date.atStartOfDay(zone), date.plusDays(1).atStartOfDay(zone));
    }

    /** The share of the known time in which it ran, from 0 to 1; 0 when nothing is known. */
    public double share() {
        return known.isZero() ? 0 : on.toMillis() / (double) known.toMillis();
    }

    /** Starts in each hour that is known; 0 when nothing is. */
    public double startsPerHour() {
        return known.isZero() ? 0 : starts * 3_600_000.0 / known.toMillis();
    }

    boolean complete() {
        return known.toHours() >= ENOUGH;
    }

    /** With so much more time. {@code run}: how long the present run has lasted in this day by the end of it. */
    Day with(Duration more, boolean running, Duration run) {
        Duration ran = running ? on.plus(more) : on;
        Duration best = running && run.compareTo(longest) > 0 ? run : longest;
        return new Day(date, ran, known.plus(more), starts, best);
    }

    Day started() {
        return new Day(date, on, known, starts + 1, longest);
    }
}
