package yardlight.gateway.vacations;

import biweekly.component.VEvent;
import biweekly.io.TimezoneAssignment;
import biweekly.io.TimezoneInfo;
import biweekly.property.DateStart;
import biweekly.property.ExceptionRule;
import biweekly.property.RecurrenceProperty;
import biweekly.property.RecurrenceRule;
import biweekly.util.Frequency;
import biweekly.util.ICalDate;
import biweekly.util.Recurrence;
import biweekly.util.com.google.ical.compat.javautil.DateIterator;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Period;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAmount;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Stream;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.setup.Away;
import yardlight.gateway.clock.Dates;

/**
 * All times of one event.
 *
 * @param floating whether it is of whole days, or of times without a zone: it is then at those times wherever the person is
 * @param counted the zone in which it recurs
 * @param zone of the person
 */
record Occurrences(VEvent event, boolean floating, TimeZone counted, TemporalAmount length, ZoneId zone) {

    private static final Set<Frequency> TOO_OFTEN =
            EnumSet.of(Frequency.SECONDLY, Frequency.MINUTELY, Frequency.HOURLY);
    private static final int MOST = 5_000;
    private static final int LONGEST_WORDS = 80;

    /** Empty for one that is cancelled, has no beginning or lasts no time. */
    static Optional<Occurrences> of(VEvent event, TimezoneInfo zones, ZoneId zone) {
        DateStart start = event.getDateStart();
        boolean cancelled = event.getStatus() != null && event.getStatus().isCancelled();
        if (cancelled || start == null || start.getValue() == null) {
            return Optional.empty();
        }
        boolean dates = !start.getValue().hasTime();
        boolean floating = dates || zones.isFloating(start);
        TimezoneAssignment assigned = zones.getTimezone(start);
        // The library reads what has no zone in that of this machine.
        TimeZone counted = floating
                ? TimeZone.getDefault()
                : assigned == null ? TimeZone.getTimeZone("UTC") : assigned.getTimeZone();
        return length(event, dates).map(length -> new Occurrences(event, floating, counted, length, zone));
    }

    /** RFC 5545 3.6.1: one that says nothing of its end lasts the day, if it is of whole days, and else no time. */
    private static Optional<TemporalAmount> length(VEvent event, boolean dates) {
        Instant start = event.getDateStart().getValue().toInstant();
        Optional<Instant> end = Optional.ofNullable(event.getDateEnd())
                .map(one -> one.getValue().toInstant())
                .or(() -> Optional.ofNullable(event.getDuration())
                        .map(one -> start.plusMillis(one.getValue().toMillis())));
        if (dates) {
            long days =
                    end.map(at -> ChronoUnit.DAYS.between(day(start), day(at))).orElse(1L);
            return Optional.<TemporalAmount>of(Period.ofDays(Math.toIntExact(Math.min(days, 3_650))))
                    .filter(any -> days > 0);
        }
        return end.filter(start::isBefore).map(at -> Duration.between(start, at));
    }

    private static LocalDateTime day(Instant at) {
        return LocalDateTime.ofInstant(at, ZoneId.systemDefault());
    }

    /**
     * Why its rules are more than a vacation needs: rules like these would have us walk for millions of times before there is
     * one of now.
     */
    Optional<Sentence> fault() {
        List<Recurrence> rules = Stream.<RecurrenceProperty>concat(
                        event.getProperties(RecurrenceRule.class).stream(),
                        event.getProperties(ExceptionRule.class).stream())
                .map(rule -> rule.getValue())
                .filter(Objects::nonNull)
                .toList();
        if (rules.stream().anyMatch(Occurrences::tooOften)) {
            return Optional.of(Sentence.of(
                    "vacations.too-often", "an event in it comes back more often than daily: that is no vacation"));
        }
        return rules.stream().anyMatch(Occurrences::tooElaborate)
                ? Optional.of(Sentence.of(
                        "vacations.too-elaborate", "an event in it comes back by a rule that is too elaborate"))
                : Optional.empty();
    }

    private static boolean tooOften(Recurrence rule) {
        return TOO_OFTEN.contains(rule.getFrequency())
                || !rule.getByHour().isEmpty()
                || !rule.getByMinute().isEmpty()
                || !rule.getBySecond().isEmpty();
    }

    /** With either of these the library goes through all times from the first one on. */
    private static boolean tooElaborate(Recurrence rule) {
        return !rule.getBySetPos().isEmpty() || rule.getCount() != null && rule.getCount() > MOST;
    }

    /** Where an exception takes out every time of a rule without an end the library would look for the next one for ever. */
    private void endAt(Instant end) {
        var until = new ICalDate(Dates.of(end), true);
        event.getProperties(RecurrenceRule.class).stream()
                .filter(rule -> rule.getValue() != null && rule.getValue().getCount() == null)
                .filter(rule -> rule.getValue().getUntil() == null
                        || rule.getValue().getUntil().after(until))
                .forEach(rule -> rule.setValue(
                        new Recurrence.Builder(rule.getValue()).until(until).build()));
    }

    /** @param moved at these instants there is nothing any more */
    List<Away> between(Instant from, Instant to, Set<Instant> moved) {
        var found = new ArrayList<Away>();
        boolean own = event.getRecurrenceId() != null;
        endAt(to.plus(Duration.ofDays(2)));
        DateIterator times = event.getDateIterator(counted);
        // A time that has begun counts as far as it goes on.
        times.advanceTo(Dates.of(from.minus(longest()).minus(Duration.ofDays(2))));
        for (int i = 0; i < MOST && times.hasNext(); i++) {
            Instant start = Dates.instant(times.next());
            if (!start.isBefore(to)) {
                break;
            }
            if (own || !moved.contains(start)) {
                away(start).filter(one -> one.overlaps(from, to, zone)).ifPresent(found::add);
            }
        }
        return found;
    }

    private Duration longest() {
        return length instanceof Period days ? Duration.ofDays(days.getDays()) : (Duration) length;
    }

    private Optional<Away> away(Instant start) {
        LocalDateTime from = LocalDateTime.ofInstant(start, floating ? counted.toZoneId() : zone);
        LocalDateTime to = floating ? from.plus(length) : LocalDateTime.ofInstant(start.plus(length), zone);
        return from.isBefore(to) ? Optional.of(new Away(from, to, words(), true)) : Optional.empty();
    }

    /** What it is called, cut where that is long; may be empty. */
    String words() {
        String summary = event.getSummary() == null || event.getSummary().getValue() == null
                ? ""
                : event.getSummary().getValue();
        String plain = summary.replaceAll("[\\p{C}\\s]+", " ").strip();
        return plain.length() <= LONGEST_WORDS
                ? plain
                : plain.substring(0, LONGEST_WORDS).strip();
    }
}
