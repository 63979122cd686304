package yardlight.escalation.runtime;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When something ran: the last 24 hours in segments, and the last calendar days at its site in sums. Between two segments
 * may lie a while of which nothing is known.
 *
 * @param segments of the last 24 hours, oldest first, at most {@link #SEGMENTS}: what cycles faster than that is known for
 *     less than 24 hours
 * @param days oldest first, today last, at most {@link #DAYS}
 */
public record RunTime(List<Segment> segments, List<Day> days) {

    /** Nothing was ever heard of it. */
    public static final RunTime NONE = new RunTime(List.of(), List.of());

    public static final int SEGMENTS = 300;

    /** Two weeks, and today. */
    public static final int DAYS = 15;

    private static final Duration ROLLING = Duration.ofHours(24);

    public RunTime {
        segments = List.copyOf(segments);
        days = List.copyOf(days);
    }

    /**
     * With one more reading of the signal. Up to it the signal was what it was before, unless that is too long ago to be
     * believed; a reading that is not newer than the last one changes nothing. Times are taken to the second.
     *
     * @param zone of the site, for its calendar days
     * @param hold for how long a reading is believed
     */
    public RunTime plus(Instant exactly, boolean on, ZoneId zone, Duration hold) {
        Instant at = exactly.truncatedTo(ChronoUnit.SECONDS);
        if (segments.isEmpty()) {
            return new RunTime(List.of(new Segment(at, at, on)), days);
        }
        Segment last = last();
        if (!last.to().isBefore(at)) {
            return this;
        }
        var kept = new ArrayList<>(segments);
        boolean believed = Duration.between(last.to(), at).compareTo(hold) <= 0;
        List<Day> sums = days;
        if (believed) {
            Segment longer = last.until(at);
            kept.set(kept.size() - 1, longer);
            sums = spread(sums, longer, last.to(), zone);
        }
        if (!believed || last.on() != on) {
            kept.add(new Segment(at, at, on));
        }
        if (believed && on && !last.on()) {
            sums = started(sums, LocalDate.ofInstant(at, zone));
        }
        return new RunTime(newest(kept, at), sums);
    }

    private static List<Segment> newest(List<Segment> segments, Instant at) {
        Instant start = at.minus(ROLLING);
        List<Segment> within = segments.stream()
                .filter(one -> one.to().isAfter(start))
                .map(one -> one.since(start))
                .toList();
        return within.subList(Math.max(0, within.size() - SEGMENTS), within.size());
    }

    /** Adds what the segment has after {@code from} to the days that it lies in. */
    private static List<Day> spread(List<Day> days, Segment segment, Instant from, ZoneId zone) {
        List<Day> sums = days;
        Instant start = from;
        while (start.isBefore(segment.to())) {
            LocalDate date = LocalDate.ofInstant(start, zone);
            Instant midnight = date.atStartOfDay(zone).toInstant();
            Instant next = date.plusDays(1).atStartOfDay(zone).toInstant();
            Instant end = next.isBefore(segment.to()) ? next : segment.to();
            Duration run = Duration.between(segment.from().isAfter(midnight) ? segment.from() : midnight, end);
            Day day = of(sums, date).with(Duration.between(start, end), segment.on(), run);
            sums = with(sums, day);
            start = end;
        }
        return sums;
    }

    private static List<Day> started(List<Day> days, LocalDate date) {
        return with(days, of(days, date).started());
    }

    private static Day of(List<Day> days, LocalDate date) {
        return days.stream().filter(day -> day.date().equals(date)).findFirst().orElseGet(() -> Day.empty(date));
    }

    private static List<Day> with(List<Day> days, Day changed) {
        var next = new ArrayList<>(days);
        next.removeIf(day -> day.date().equals(changed.date())
                || !day.date().isAfter(changed.date().minusDays(DAYS)));
        next.add(changed);
        return next;
    }

    private Segment last() {
        return segments.get(segments.size() - 1);
    }

    /** Whether it runs by the newest reading; empty when there was none. */
    public Optional<Boolean> running() {
        return segments.isEmpty() ? Optional.empty() : Optional.of(last().on());
    }

    /** Since when it has been what it is, as far as that is known; empty when there was no reading. */
    public Optional<Instant> since() {
        return segments.isEmpty() ? Optional.empty() : Optional.of(last().from());
    }

    /** The calendar day, as far as it is known. */
    public Optional<Day> day(LocalDate date) {
        return days.stream().filter(day -> day.date().equals(date)).findFirst();
    }

    /** The 24 hours before the newest reading: of this date in name only. */
    public Optional<Day> lastDay(ZoneId zone) {
        if (segments.isEmpty()) {
            return Optional.empty();
        }
        Day sum = Day.empty(LocalDate.ofInstant(last().to(), zone));
        Segment before = null;
        for (Segment one : segments) {
            sum = sum.with(one.length(), one.on(), one.length());
            boolean follows = before != null && before.to().equals(one.from());
            sum = one.on() && follows ? sum.started() : sum;
            before = one;
        }
        return Optional.of(sum);
    }

    /**
     * How the last 24 hours compare with the days before today; empty while there is too little of either.
     *
     * @param days up to so many complete days are looked at
     */
    public Optional<Comparison> compared(ZoneId zone, int days) {
        Optional<Day> now = lastDay(zone).filter(Day::complete);
        return now.flatMap(day -> {
            List<Day> earlier = this.days.stream()
                    .filter(Day::complete)
                    .filter(one -> one.date().isBefore(day.date()))
                    .toList();
            List<Day> newest = earlier.subList(Math.max(0, earlier.size() - days), earlier.size());
            return Comparison.of(
                    day.share(), newest.stream().mapToDouble(Day::share).toArray());
        });
    }
}
