package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.wording.TurnTold;

/**
 * Notes that a turn has changed hands, and tells who comes on and who goes off: one text each, not in their quiet hours. Who
 * stays on, because the turn goes from them to themselves, hears nothing.
 */
final class Handovers {

    /** Further than this nothing is looked for. */
    private static final Duration FURTHEST = Duration.ofDays(400);

    private final Draft draft;
    private final TurnNews news;

    Handovers(Draft draft, Notices notices) {
        this.draft = draft;
        this.news = new TurnNews(draft, notices);
    }

    Answer take(String id) {
        Optional<String> on = behind(id, draft.now());
        draft.log(
                Entry.What.ROSTER,
                Map.of("roster", id, "contact", on.orElse("nobody")),
                "roster " + id + ": " + on.orElse("nobody") + " is on call");
        Optional.ofNullable(draft.setup().rosters().get(id)).ifPresent(roster -> tell(roster, on));
        return new Answer.Done();
    }

    private void tell(Roster roster, Optional<String> on) {
        Instant now = draft.now();
        Optional<Instant> changed = roster.changes(now.minus(reach(roster)), now.plusNanos(1))
                .filter(at -> !behind(roster.id(), at.minusNanos(1)).equals(behind(roster.id(), at)))
                .max(Instant::compareTo);
        if (changed.isEmpty()) {
            return;
        }
        Optional<String> off = behind(roster.id(), changed.get().minusNanos(1));
        Instant until = until(roster, now);
        on.ifPresent(contact -> news.tell(
                contact,
                TurnNews.comesOn(roster.id(), changed.get(), contact),
                told(TurnTold.Kind.COMES_ON, roster, off, changed.get(), until)));
        off.filter(contact -> on.isPresent() && !on.get().equals(contact))
                .ifPresent(contact -> news.tell(
                        contact,
                        TurnNews.goesOff(roster.id(), changed.get(), contact),
                        told(TurnTold.Kind.GOES_OFF, roster, on, changed.get(), until)));
    }

    /** When somebody else has it; the end of what is looked ahead for, when nobody else ever has. */
    private Instant until(Roster roster, Instant now) {
        Optional<String> on = behind(roster.id(), now);
        return roster.changes(now, now.plus(reach(roster)))
                .sorted()
                .filter(at -> !behind(roster.id(), at).equals(on))
                .findFirst()
                .orElse(now.plus(reach(roster)));
    }

    /** Once round the order: by then the turn is somebody else's, if there is anybody else. */
    private static Duration reach(Roster roster) {
        Duration round = roster.tour().multipliedBy(roster.order().size() + 1L).plusDays(1);
        return round.compareTo(FURTHEST) < 0 ? round : FURTHEST;
    }

    private TurnTold told(TurnTold.Kind kind, Roster roster, Optional<String> other, Instant from, Instant until) {
        String name = other.map(this::name).orElse("");
        return new TurnTold(kind, name, roster.id(), from, until, roster.zone(), 0);
    }

    private Optional<String> behind(String roster, Instant at) {
        List<String> people = draft.setup().peopleBehind(Rung.ROSTER + roster, at);
        return people.stream().findFirst();
    }

    private String name(String contact) {
        return Optional.ofNullable(draft.setup().contacts().get(contact))
                .map(Contact::name)
                .orElse(contact);
    }
}
