package yardlight.escalation;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.roster.Stretch;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.swap.Part;
import yardlight.escalation.swap.SwapDay;
import yardlight.escalation.walltime.WallTime;

/** Whose a turn is, and who may take it: whoever can be called, and with whom no alarm is heard later than it matters. */
final class SwapPeople {

    static final Sentence NOT_ASKED = Sentence.of("swap.not-asked", "nobody asked you to take this turn");

    private static final Sentence CHANGED =
            Sentence.of("swap.changed", "the roster was changed meanwhile; there is nothing to take any more");

    private final Draft draft;

    SwapPeople(Draft draft) {
        this.draft = draft;
    }

    /** A time of a roster that is somebody's from beginning to end. */
    record Turn(Roster roster, Part part, Instant from, Instant to) {}

    /** @param refusal why nobody can be asked; empty when there is somebody */
    record Others(List<String> contacts, Optional<Sentence> refusal) {}

    /** The turns of the contact on that day, each as far as it has not passed; one for each roster at most. */
    List<Turn> turns(String contact, SwapDay day) {
        var turns = new ArrayList<Turn>();
        for (Roster roster : draft.setup().rosters().values()) {
            LocalTime handover = roster.start().toLocalTime();
            LocalDateTime local = LocalDateTime.ofInstant(draft.now(), roster.zone());
            LocalTime begins = day.night() ? SwapDay.NIGHT_ENDS : handover;
            Part window =
                    day.of(day.from(local.minusSeconds(begins.toSecondOfDay()).toLocalDate()), handover);
            own(roster.id(), window, contact).ifPresent(turns::add);
        }
        return turns;
    }

    /** The first time without a break in which the contact is on call themselves, within this one and from now on. */
    Optional<Turn> own(String id, Part window, String contact) {
        Roster roster = draft.setup().rosters().get(id);
        if (roster == null) {
            return Optional.empty();
        }
        Instant from = later(WallTime.instant(window.from(), roster.zone()), nextMinute(draft.now()));
        Instant to = WallTime.instant(window.to(), roster.zone());
        if (!from.isBefore(to)) {
            return Optional.empty();
        }
        Instant start = null;
        Instant end = null;
        for (Stretch stretch : roster.stretches(from, to)) {
            boolean theirs = stretch.onCall().filter(contact::equals).isPresent();
            if (theirs && (end == null || end.equals(stretch.from()))) {
                start = start == null ? stretch.from() : start;
                end = stretch.to();
            }
        }
        return start == null ? Optional.empty() : turn(roster, start, end);
    }

    private static Optional<Turn> turn(Roster roster, Instant from, Instant to) {
        LocalDateTime start = LocalDateTime.ofInstant(from, roster.zone());
        LocalDateTime end = LocalDateTime.ofInstant(to, roster.zone());
        // In the hour that comes twice a local time can end before it starts.
        return start.isBefore(end) ? Optional.of(new Turn(roster, new Part(start, end), from, to)) : Optional.empty();
    }

    /** Everybody else in the order of the roster who may take the turn. */
    Others others(Turn turn, String contact) {
        var others = new LinkedHashSet<String>();
        turn.roster().order().forEach(name -> others.addAll(draft.setup().peopleBehind(name, turn.from())));
        others.remove(contact);
        if (others.isEmpty()) {
            return none(Sentence.of("swap.alone", "nobody else has turns in this roster"));
        }
        var carriers = new Carriers(draft);
        others.removeIf(one -> away(one, turn));
        if (others.isEmpty()) {
            return none(Sentence.of("swap.away", "all of the others are away then"));
        }
        List<String> reached =
                others.stream().filter(one -> carriers.has(one, 0)).toList();
        if (reached.isEmpty()) {
            return none(Sentence.of("swap.no-line", "none of the others has a line by which they can be asked"));
        }
        var silence = new SwapSilence(draft.setup(), draft.stops(), turn);
        List<String> fit = reached.stream()
                .filter(one -> !silence.longerWith(
                        draft.setup().withRelief(turn.roster().id(), relief(turn, one))))
                .toList();
        return fit.isEmpty()
                ? none(Sentence.of("swap.nobody", "with any of the others nobody would be called at once then"))
                : new Others(fit, Optional.empty());
    }

    private boolean away(String contact, Turn turn) {
        return Optional.ofNullable(draft.setup().contacts().get(contact))
                .filter(known -> !known.away(turn.from(), turn.to()).isEmpty())
                .isPresent();
    }

    private static Others none(Sentence why) {
        return new Others(List.of(), Optional.of(why));
    }

    /** Why this contact may not take it by this setup; empty when they may. */
    Optional<Sentence> refusal(Offer offer, String contact, Setup next) {
        if (offer.by().equals(contact)) {
            return Optional.of(Sentence.of("swap.own", "it is your own turn; NO and the number takes it back"));
        }
        if (!offer.asked().contains(contact)) {
            return Optional.of(NOT_ASKED);
        }
        if (!offer.open(draft.now())) {
            return Optional.of(over(offer));
        }
        Optional<Turn> turn = rest(offer);
        Roster after = next.rosters().get(offer.roster());
        boolean theirs = turn.isPresent()
                && after != null
                && after.stretches(turn.get().from(), turn.get().to()).stream()
                        .allMatch(stretch ->
                                stretch.onCall().filter(contact::equals).isPresent());
        if (!theirs) {
            return Optional.of(CHANGED);
        }
        if (away(contact, turn.get())) {
            return Optional.of(Sentence.of("swap.you-are-away", "you are away then, the setup says"));
        }
        return !new Carriers(draft).has(contact, 0)
                        || new SwapSilence(draft.setup(), draft.stops(), turn.get()).longerWith(next)
                ? Optional.of(Sentence.of("swap.nobody-then", "nobody would be called at once then"))
                : Optional.empty();
    }

    /** Why an offer that is over is. */
    Sentence over(Offer offer) {
        return switch (offer.state()) {
            case TAKEN -> {
                String taker = offer.taker().orElse("");
                String name = Optional.ofNullable(draft.setup().contacts().get(taker))
                        .map(one -> one.name())
                        .orElse(taker);
                yield Sentence.of("swap.taken", name + " has taken it already", name);
            }
            case WITHDRAWN -> Sentence.of("swap.withdrawn", "it was taken back; nobody needs to take it");
            case LAPSED -> CHANGED;
            case OPEN, DECLINED, EXPIRED -> Sentence.of("swap.expired", "it is too late for this one");
        };
    }

    /** Whether all that is left of it is the turn of whoever asked. */
    boolean stillTheirs(Offer offer) {
        return rest(offer).isPresent();
    }

    private Optional<Turn> rest(Offer offer) {
        Optional<Turn> own = own(offer.roster(), new Part(offer.from(), offer.to()), offer.by());
        return own.filter(
                turn -> !turn.part().from().isAfter(offer.left(localNow(turn)).from())
                        && !turn.part().to().isBefore(offer.to()));
    }

    private LocalDateTime localNow(Turn turn) {
        return LocalDateTime.ofInstant(draft.now(), turn.roster().zone());
    }

    private static Relief relief(Turn turn, String contact) {
        return new Relief(turn.part().from(), turn.part().to(), contact);
    }

    private static Instant nextMinute(Instant now) {
        Instant minute = now.truncatedTo(ChronoUnit.MINUTES);
        return minute.equals(now) ? now : minute.plus(1, ChronoUnit.MINUTES);
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
