package yardlight.gateway.vacations;

import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.TimezoneInfo;
import biweekly.io.text.ICalReader;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.setup.Away;

/**
 * Reads when somebody is away out of a calendar (RFC 5545): every event that is not cancelled, with all its recurrences from
 * now to a good year ahead. It does not ask whether an event is shown as busy: programs disagree about that for whole days.
 *
 * @param zone of the person: whole days, and times without a zone, are meant there
 */
record VacationFile(ZoneId zone, Instant now) {

    /** Of the text, in bytes. */
    static final int MOST_BYTES = 1_048_576;

    private static final int MOST_EVENTS = 2_000;
    private static final int MOST_AWAY = 300;
    private static final Duration AHEAD = Duration.ofDays(400);

    /**
     * What there is in it.
     *
     * @param left what the events are called whose rules are more than is followed here; the others are taken over
     * @param fault why it cannot be taken over; then there is nothing
     */
    record Found(List<Away> away, List<String> left, Optional<Sentence> fault) {

        private static Found fault(Sentence why) {
            return new Found(List.of(), List.of(), Optional.of(why));
        }
    }

    Found read(String text) {
        Optional<ICalendar> calendar = calendar(text);
        if (calendar.isEmpty()) {
            return Found.fault(Sentence.of("vacations.no-calendar", "there is no calendar in it"));
        }
        List<VEvent> events = calendar.get().getEvents();
        return events.size() > MOST_EVENTS
                ? Found.fault(Sentence.of(
                        "vacations.many-events", "it must have at most " + MOST_EVENTS + " events", MOST_EVENTS))
                : read(events, timezones(calendar.get()));
    }

    private Found read(List<VEvent> events, TimezoneInfo zones) {
        var away = new LinkedHashSet<Away>();
        var left = new ArrayList<Occurrences>();
        Map<String, Set<Instant>> moved = moved(events);
        for (VEvent event : events) {
            Optional<Occurrences> occurrences = Occurrences.of(event, zones, zone);
            occurrences.filter(one -> one.fault().isPresent()).ifPresent(left::add);
            occurrences
                    .filter(one -> one.fault().isEmpty())
                    .ifPresent(one ->
                            away.addAll(one.between(now, now.plus(AHEAD), moved.getOrDefault(uid(event), Set.of()))));
            if (away.size() > MOST_AWAY) {
                return Found.fault(
                        Sentence.of("vacations.many", "it must have at most " + MOST_AWAY + " times away", MOST_AWAY));
            }
        }
        if (away.isEmpty() && !left.isEmpty()) {
            return Found.fault(left.get(0).fault().orElseThrow());
        }
        List<Away> sorted = away.stream()
                .sorted(Comparator.comparing(Away::from).thenComparing(Away::to))
                .toList();
        return new Found(
                sorted, left.stream().map(Occurrences::words).distinct().toList(), Optional.empty());
    }

    private static TimezoneInfo timezones(ICalendar calendar) {
        return calendar.getTimezoneInfo();
    }

    private static Optional<ICalendar> calendar(String text) {
        try (var reader = new ICalReader(text)) {
            return Optional.ofNullable(reader.readNext());
        } catch (IOException | RuntimeException unreadable) {
            return Optional.empty();
        }
    }

    /** One recurrence that was moved stands as an event of its own: at its old place there is nothing (RFC 5545 3.8.4.4). */
    private static Map<String, Set<Instant>> moved(List<VEvent> events) {
        var moved = new HashMap<String, Set<Instant>>();
        events.stream()
                .filter(event -> event.getRecurrenceId() != null
                        && event.getRecurrenceId().getValue() != null)
                .forEach(event -> moved.computeIfAbsent(uid(event), any -> new HashSet<>())
                        .add(event.getRecurrenceId().getValue().toInstant()));
        return moved;
    }

    private static String uid(VEvent event) {
        return event.getUid() == null ? "" : event.getUid().getValue();
    }
}
