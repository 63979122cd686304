package yardlight.gateway.feed;

import biweekly.ICalDataType;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.property.Classification;
import biweekly.property.Status;
import biweekly.property.Uid;
import biweekly.util.Duration;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.roster.Stretch;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.clock.Dates;
import yardlight.gateway.page.Tongue;

/**
 * A person's turns as a calendar (RFC 5545, with the properties of RFC 7986). An event is a part of a tour that the person has:
 * the same part of the same tour is the same event however its times are changed, so that a calendar moves it and does not
 * show it twice. Times are in UTC: they are instants that the roster has worked out through every change of the clock, and
 * nothing recurs, so there is nothing that a zone could add.
 *
 * @param seed makes the ids those of this gateway
 * @param edited the edit that the setup comes from: what changed later has a higher sequence
 */
record TurnCalendar(Setup setup, Tongue tongue, byte[] seed, Edited edited) {

    /** @param version of the setup, which only grows */
    record Edited(int version, Instant at) {}

    static final java.time.Duration BACK = java.time.Duration.ofDays(30);
    static final java.time.Duration AHEAD = java.time.Duration.ofDays(400);

    /** More tours than these no calendar shows with comfort; of very short ones it reaches less far. */
    private static final int MOST_TOURS = 2_000;

    private static final Duration REFRESH = Duration.builder().hours(1).build();

    ICalendar of(Contact contact, Instant now) {
        var calendar = new ICalendar();
        calendar.setProductId("-//Yardlight//Turns//EN");
        calendar.setName(tongue.say("feed.name", contact.name()));
        calendar.setDescription(tongue.say("feed.description", contact.name()));
        calendar.setUid(new Uid(id("calendar", contact.id())));
        calendar.setLastModified(Dates.of(edited.at()));
        // RFC 7986 5.7 has no type by default, so it has to be said; the library leaves it out.
        calendar.setRefreshInterval(REFRESH).getParameters().setValue(ICalDataType.DURATION);
        setup.rosters().values().forEach(roster -> events(roster, contact, now).forEach(calendar::addEvent));
        return calendar;
    }

    private List<VEvent> events(Roster roster, Contact contact, Instant now) {
        Instant from = roster.tourAt(now.minus(BACK)).map(Stretch::from).orElse(now.minus(BACK));
        Instant far = now.plus(AHEAD);
        Instant most = from.plus(roster.tour().multipliedBy(MOST_TOURS));
        Instant to = roster.nextHandover(most.isBefore(far) ? most : far);
        Map<Instant, Integer> parts = new HashMap<>();
        var events = new ArrayList<VEvent>();
        for (Stretch stretch : roster.stretches(from, to)) {
            if (stretch.onCall().filter(contact.id()::equals).isPresent()) {
                Instant tour = roster.tourAt(stretch.from()).map(Stretch::from).orElse(Instant.EPOCH);
                int part = parts.merge(tour, 1, Integer::sum);
                events.add(event(roster, stretch, id(roster.id(), tour.toString(), contact.id(), "" + part)));
            }
        }
        return events;
    }

    private VEvent event(Roster roster, Stretch stretch, String id) {
        var event = new VEvent();
        event.setUid(id);
        event.setSequence(edited.version());
        event.setDateTimeStamp(Dates.of(edited.at()));
        event.setLastModified(Dates.of(edited.at()));
        event.setDateStart(Dates.of(stretch.from()), true);
        event.setDateEnd(Dates.of(stretch.to()), true);
        event.setSummary(tongue.say("feed.on-call", roster.id()));
        stretch.relief()
                .flatMap(relief -> stretch.tour())
                .ifPresent(other -> event.setDescription(tongue.say("feed.instead", name(other))));
        event.setStatus(Status.confirmed());
        event.setClassification(Classification.private_());
        event.setTransparency(true);
        return event;
    }

    private String name(String contact) {
        return setup.contacts().containsKey(contact)
                ? setup.contacts().get(contact).name()
                : contact;
    }

    /** RFC 7986 5.3 wants ids from which nobody can read whose they are. */
    private String id(String... parts) {
        byte[] words = String.join(" ", parts).getBytes(StandardCharsets.UTF_8);
        var both = new byte[seed.length + words.length];
        System.arraycopy(seed, 0, both, 0, seed.length);
        System.arraycopy(words, 0, both, seed.length, words.length);
        return UUID.nameUUIDFromBytes(both).toString();
    }
}
