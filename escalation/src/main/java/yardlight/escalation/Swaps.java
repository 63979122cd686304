package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.swap.OfferState;
import yardlight.escalation.swap.OfferTrigger;
import yardlight.escalation.swap.SwapDay;
import yardlight.escalation.walltime.WallTime;
import yardlight.escalation.wording.TurnTold;

/**
 * Asks the others of a roster whether they take a turn of somebody's, or a part of one. All are asked at once and the first
 * yes has it: that yes is an edit of the setup, stored together with the end of the offer or not at all. Who may take it is
 * for {@link SwapPeople}.
 */
final class Swaps {

    /** For how long others are asked at most; less when the turn begins earlier. */
    static final Duration LONGEST = Duration.ofDays(3);

    /** A turn that begins sooner, or has begun, is asked for at least so long, but not beyond its end. */
    static final Duration SHORTEST = Duration.ofHours(2);

    /** Who is called meanwhile is worked out on the lane, which everything waits for. Common practice, no source. */
    static final Duration LONGEST_PART = Duration.ofDays(60);

    private final Draft draft;
    private final Codes codes;
    private final SwapPeople people;
    private final TurnNews news;

    Swaps(Draft draft, Codes codes, Notices notices) {
        this.draft = draft;
        this.codes = codes;
        this.people = new SwapPeople(draft);
        this.news = new TurnNews(draft, notices);
    }

    Answer take(SwapSaid said) {
        return switch (said.kind()) {
            case ASKED -> asked(((SwapSaid.Asked) said).contact(), ((SwapSaid.Asked) said).day());
            case ASKED_FOR -> asked((SwapSaid.AskedFor) said);
            case DECLINED -> declined((SwapSaid.Declined) said);
            case WITHDRAWN -> withdrawn((SwapSaid.Withdrawn) said);
            case DUE -> due(((SwapSaid.Due) said).offer());
        };
    }

    private Answer asked(String contact, SwapDay day) {
        List<SwapPeople.Turn> turns = people.turns(contact, day);
        if (turns.isEmpty()) {
            return refuse(Sentence.of("swap.none", "you have no turn then"));
        }
        return turns.size() > 1
                ? refuse(Sentence.of(
                        "swap.several", "you have turns in several rosters then; the page of turns tells them apart"))
                : ask(turns.get(0), contact, contact);
    }

    private Answer asked(SwapSaid.AskedFor said) {
        if (Duration.between(said.part().from(), said.part().to()).compareTo(LONGEST_PART) > 0) {
            long days = LONGEST_PART.toDays();
            return refuse(Sentence.of("swap.long", "no more than " + days + " days can be asked for at once", days));
        }
        return people.own(said.roster(), said.part(), said.contact())
                .map(turn -> ask(turn, said.contact(), said.by().orElse(said.contact())))
                .orElseGet(() -> refuse(Sentence.of("swap.none", "you have no turn then")));
    }

    private Answer ask(SwapPeople.Turn turn, String contact, String by) {
        Optional<Offer> before = draft.offers(turn.roster().id()).stream()
                .filter(offer -> offer.by().equals(contact) && offer.overlaps(turn.part()) && offer.open(draft.now()))
                .findFirst();
        if (before.isPresent()) {
            return new Answer.Swapped(before.get(), true);
        }
        SwapPeople.Others others = people.others(turn, contact);
        if (others.refusal().isPresent()) {
            return new Answer.Refusal(others.refusal().get());
        }
        int code = codes.next();
        String id = turn.roster().id() + ".swap." + Long.toString(draft.now().getEpochSecond(), 36) + "-" + code;
        Offer offer = Offer.made(
                id, code, turn.roster().id(), contact, turn.part(), others.contacts(), draft.now(), expiry(turn));
        draft.put(offer);
        log(
                offer,
                "asked for by " + by + ": who takes over from " + contact + " " + offer.from() + " to " + offer.to()
                        + "? Asked are " + String.join(", ", offer.asked()) + ", until " + offer.expiresAt());
        for (String other : offer.asked()) {
            tell(TurnTold.Kind.ASKED, offer, other, contact, TurnNews.question(id, other));
        }
        return new Answer.Swapped(offer, false);
    }

    private Instant expiry(SwapPeople.Turn turn) {
        Instant soon = draft.now().plus(SHORTEST);
        Instant begun = soon.isBefore(turn.to()) ? soon : turn.to();
        Instant limit = turn.from().isBefore(soon) ? begun : turn.from();
        Instant longest = draft.now().plus(LONGEST);
        return limit.isBefore(longest) ? limit : longest;
    }

    private Answer declined(SwapSaid.Declined said) {
        Optional<Offer> known = draft.offer(said.offer());
        if (known.isEmpty() || !known.get().asked().contains(said.contact())) {
            return refuse(Sentence.of("swap.not-asked", "nobody asked you to take this turn"));
        }
        Offer before = known.get();
        if (before.taker().filter(said.contact()::equals).isPresent()) {
            return refuse(Sentence.of(
                    "swap.taken-by-you", "you have taken it already; to give it back, ask for a swap of your own"));
        }
        Optional<Offer> after =
                before.after(OfferTrigger.DECLINE, said.contact(), draft.now()).filter(offer -> !offer.equals(before));
        after.ifPresent(offer -> {
            draft.put(offer);
            log(offer, said.contact() + " says no");
            if (offer.state() == OfferState.DECLINED) {
                tell(TurnTold.Kind.DECLINED, offer, offer.by(), said.contact(), offer.id() + ".declined");
            }
        });
        return new Answer.Swapped(after.orElse(before), after.isEmpty());
    }

    private Answer withdrawn(SwapSaid.Withdrawn said) {
        Optional<Offer> known = draft.offer(said.offer());
        if (known.isEmpty()) {
            return refuse(Sentence.of("swap.not-asked", "nobody asked you to take this turn"));
        }
        Optional<Offer> after = known.get().after(OfferTrigger.WITHDRAW, said.by(), draft.now());
        if (after.isEmpty()) {
            return new Answer.Refusal(people.over(known.get()));
        }
        draft.put(after.get());
        log(after.get(), "taken back by " + said.by());
        return new Answer.Swapped(after.get(), false);
    }

    private Answer due(String id) {
        draft.offer(id).filter(offer -> offer.state().takeable()).ifPresent(offer -> {
            boolean unheard = offer.state() == OfferState.OPEN;
            OfferTrigger trigger = people.stillTheirs(offer) ? OfferTrigger.TIME : OfferTrigger.LAPSE;
            boolean over = !draft.now().isBefore(offer.expiresAt());
            offer.after(trigger, "", draft.now()).filter(after -> over).ifPresent(after -> {
                draft.put(after);
                log(after, after.state().word() + ": nobody took it in time");
                if (unheard && after.state() == OfferState.EXPIRED) {
                    tell(TurnTold.Kind.EXPIRED, after, after.by(), "", after.id() + ".expired");
                }
            });
        });
        return new Answer.Done();
    }

    /** Why somebody may not take a turn by this change of the setup; empty when they may, or when it is no such change. */
    Optional<Answer> refusal(Stimulus.SetupChanged change) {
        return change.taking()
                .flatMap(taking -> draft.offer(taking.offer())
                        .map(offer -> people.refusal(offer, taking.contact(), change.setup()))
                        .orElseGet(() -> Optional.of(SwapPeople.NOT_ASKED))
                        .map(Answer.Refusal::new));
    }

    /** The setup has been changed for it: the offer ends, and whoever asked hears of it. */
    Answer taken(Stimulus.Taking taking) {
        Offer offer = draft.offer(taking.offer())
                .flatMap(known -> known.after(OfferTrigger.TAKE, taking.contact(), draft.now()))
                .orElseThrow();
        draft.put(offer);
        log(offer, taking.contact() + " says yes and takes over from " + offer.by());
        tell(TurnTold.Kind.TAKEN, offer, offer.by(), taking.contact(), offer.id() + ".taken");
        return new Answer.Swapped(offer, false);
    }

    private void tell(TurnTold.Kind kind, Offer offer, String contact, String other, String id) {
        Optional<Roster> roster = Optional.ofNullable(draft.setup().rosters().get(offer.roster()));
        roster.ifPresent(known -> news.tell(
                contact,
                id,
                new TurnTold(
                        kind,
                        name(other),
                        offer.roster(),
                        WallTime.instant(offer.from(), known.zone()),
                        WallTime.instant(offer.to(), known.zone()),
                        known.zone(),
                        offer.code())));
    }

    private String name(String contact) {
        return Optional.ofNullable(draft.setup().contacts().get(contact))
                .map(Contact::name)
                .orElse(contact);
    }

    private void log(Offer offer, String words) {
        draft.log(
                Entry.What.ROSTER,
                Map.of("roster", offer.roster(), "contact", offer.by()),
                "swap " + offer.code() + " of " + offer.roster() + " " + words);
    }

    private static Answer refuse(Sentence why) {
        return new Answer.Refusal(why);
    }
}
