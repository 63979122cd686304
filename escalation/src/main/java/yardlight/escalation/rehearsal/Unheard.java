package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/**
 * The hours in which an alarm would be called to nobody. Rehearsed anew wherever quiet hours begin or end, a tour is handed
 * over or a clock is changed; in between nothing can change.
 */
public final class Unheard {

    private final Setup setup;
    private final Set<String> contacts = new TreeSet<>();
    private final Set<String> rosters = new HashSet<>();

    private Unheard(Setup setup) {
        this.setup = setup;
    }

    /**
     * A stretch of time: an alarm that comes in it finds nobody.
     *
     * @param from inclusive
     * @param to exclusive
     * @param ear never {@code OPEN}
     */
    public record Span(Instant from, Instant to, Rehearsal.Ear ear) {

        public Duration length() {
            return Duration.between(from, to);
        }
    }

    /**
     * Finds them all, in order.
     *
     * @param question {@code at} is where the search begins; the answers do not count
     * @param to where it ends, exclusive
     * @param stops as in {@link Rehearsal#of}
     * @throws IllegalArgumentException if the site is not in the setup
     */
    public static List<Span> of(Setup setup, Rehearsal.Question question, Instant to, Set<AlarmKey> stops) {
        Duration delay = Rehearsal.onDelay(setup, question);
        var edges = new TreeSet<Instant>();
        edges.add(question.at());
        new Unheard(setup)
                .changes(question.key().site(), question.at().plus(delay), to.plus(delay))
                .map(change -> change.minus(delay))
                .forEach(edges::add);
        var spans = new ArrayList<Span>();
        for (Instant edge : edges) {
            var here = new Rehearsal.Question(question.key(), question.priority(), edge, question.answers());
            Instant end = Optional.ofNullable(edges.higher(edge)).orElse(to);
            add(spans, new Span(edge, end, Rehearsal.ear(setup, here, stops)));
        }
        return List.copyOf(spans);
    }

    private static void add(List<Span> spans, Span next) {
        if (next.ear() == Rehearsal.Ear.OPEN) {
            return;
        }
        Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
        if (last != null && last.to().equals(next.from()) && last.ear() == next.ear()) {
            spans.set(spans.size() - 1, new Span(last.from(), next.to(), next.ear()));
        } else {
            spans.add(next);
        }
    }

    private Stream<Instant> changes(String site, Instant from, Instant to) {
        Ladder ladder =
                setup.site(site).map(Site::ladder).map(setup.ladders()::get).orElse(null);
        Collection<String> calls = ladder == null
                ? List.of(Rung.EVERYONE)
                : ladder.rungs().stream().flatMap(rung -> rung.call().stream()).toList();
        calls.forEach(this::behind);
        List<Contact> people = contacts.stream()
                .map(setup.contacts()::get)
                .filter(Objects::nonNull)
                .toList();
        List<Roster> turns = rosters.stream().map(setup.rosters()::get).toList();
        List<QuietHours> quiet =
                people.stream().flatMap(contact -> contact.quiet().stream()).toList();
        Stream<ZoneId> zones = Stream.concat(
                quiet.stream().map(QuietHours::zone), turns.stream().map(Roster::zone));
        return Stream.of(
                        quiet.stream().flatMap(hours -> hours.changes(from, to)),
                        turns.stream().flatMap(roster -> roster.changes(from, to)),
                        zones.distinct().flatMap(zone -> clockChanges(zone, from, to)))
                .flatMap(changes -> changes);
    }

    /** Everybody whom an entry can stand for at some time. */
    private void behind(String call) {
        if (call.equals(Rung.EVERYONE)) {
            contacts.addAll(setup.contacts().keySet());
        } else if (!call.startsWith(Rung.ROSTER)) {
            contacts.add(call);
        } else {
            Roster roster = setup.rosters().get(call.substring(Rung.ROSTER.length()));
            if (roster != null && rosters.add(roster.id())) {
                roster.order().forEach(this::behind);
                roster.reliefs().stream().map(Relief::contact).forEach(this::behind);
            }
        }
    }

    private static Stream<Instant> clockChanges(ZoneId zone, Instant from, Instant to) {
        return Stream.iterate(
                        zone.getRules().nextTransition(from),
                        change -> change != null && change.getInstant().isBefore(to),
                        change -> zone.getRules().nextTransition(change.getInstant()))
                .map(ZoneOffsetTransition::getInstant);
    }
}
