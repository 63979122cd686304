package yardlight.escalation;

import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Climb;
import yardlight.escalation.ladder.Edit;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.ladder.Reach;
import yardlight.escalation.ladder.Rung;

/** Moves callouts up their ladders: the next round, the next rung, the next climb, the end. */
final class Climbs {

    private final Draft draft;
    private final Notices notices;
    private final ShutIns shutIns;

    Climbs(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
        this.shutIns = new ShutIns(draft, notices);
    }

    /** A callout's time has come: the next round, the next rung, the next climb, or the end. */
    Answer due(String id) {
        draft.callout(id).filter(Callout::live).ifPresent(callout -> {
            if (callout.dueAt().filter(draft.now()::isBefore).isPresent()) {
                return;
            }
            Optional<Place> next = callout.kind() == Callout.Kind.HELD
                    ? Optional.of(callout.place())
                    : callout.place().next(Ladders.of(draft, callout.facts()));
            enter(callout.facts(), next, callout.place());
        });
        return new Answer.Done();
    }

    /** A contact could not be reached by any line. If that leaves nobody on the rung, the next one is called at once. */
    void notReached(Callout callout, String contact) {
        if (callout.kind() != Callout.Kind.CALLING) {
            return;
        }
        Callout.Facts facts = without(callout.facts(), contact, Map.of());
        Place place = callout.place();
        if (anybodyTold(facts, place)) {
            draft.put(callout.with(facts));
        } else {
            draft.log(facts, "goes on at once: nobody on the rung could be reached");
            enter(facts, place.nextRung(Ladders.of(draft, facts)), place);
        }
    }

    /** A contact can be reached by no line before {@code until}: as if they had been asleep when the rung was called. */
    void notNow(Callout callout, String contact, Instant until) {
        if (callout.kind() != Callout.Kind.CALLING) {
            return;
        }
        Callout.Facts facts = without(callout.facts(), contact, Map.of(contact, until));
        if (anybodyTold(facts, callout.place())) {
            draft.put(callout.with(facts));
        } else {
            draft.log(facts, "goes on at once: nobody on the rung can be reached now");
            enter(without(callout.facts(), contact, Map.of()), Optional.of(callout.place()), callout.place());
        }
    }

    /** A contact can be reached by no line any more. Nobody waits for them, nor for the end of their quiet hours. */
    void gone(Callout callout, String contact) {
        var held = new TreeMap<>(callout.facts().held());
        held.remove(contact);
        boolean waits = callout.kind() == Callout.Kind.CALLING;
        boolean told = callout.facts().told().contains(contact);
        Callout.Facts facts =
                without(callout.facts().withReached(callout.facts().told(), held), contact, Map.of());
        Place place = callout.place();
        if (waits && (!told || anybodyTold(facts, place))) {
            draft.put(callout.with(facts));
        } else {
            draft.log(facts, "goes on at once: no line to " + contact + " is left");
            Optional<Place> next = waits ? place.nextRung(Ladders.of(draft, facts)) : Optional.of(place);
            enter(facts, next, place);
        }
    }

    private static Callout.Facts without(Callout.Facts facts, String contact, Map<String, Instant> asleep) {
        var told = new TreeSet<>(facts.told());
        told.remove(contact);
        var held = new TreeMap<>(facts.held());
        held.putAll(asleep);
        return facts.withReached(told, held);
    }

    private boolean anybodyTold(Callout.Facts facts, Place place) {
        List<Rung> rungs = Ladders.of(draft, facts).rungs();
        return place.rung() < rungs.size()
                && (rungs.get(place.rung()).asks()
                        || PeopleNow.of(draft, facts).people(rungs.get(place.rung())).stream()
                                .anyMatch(facts.told()::contains));
    }

    /** Another setup: who was left to sleep may have been removed, and the rungs may be others or stand elsewhere. */
    void reconsider(Callout callout) {
        Ladder was = Ladders.of(draft.before().setup(), callout.facts());
        Ladder ladder = Ladders.of(draft, callout.facts());
        boolean calling = callout.kind() == Callout.Kind.CALLING;
        if (calling && was.equals(ladder) || !stands(callout)) {
            return;
        }
        var held = new TreeMap<>(callout.facts().held());
        held.keySet().retainAll(draft.setup().contacts().keySet());
        Callout.Facts facts = callout.facts().withReached(callout.facts().told(), held);
        Edit.Found found = new Edit(was, ladder).of(callout.place(), calling);
        Place place = found.place();
        boolean moved = !place.equals(callout.place());
        if (calling && moved) {
            draft.log(facts, "is at rung " + (place.rung() + 1) + " now: its ladder was changed");
        }
        if (found.calls()) {
            enter(facts, Optional.of(place), place);
        } else if (moved && callout instanceof Callout.Calling one) {
            draft.put(new Callout.Calling(facts, place, one.nextAt()));
        }
    }

    /** Whether it stands as it did before this decision: what was called in it was called by the ladder as it is now. */
    private boolean stands(Callout callout) {
        return draft.before()
                .callout(callout.id())
                .filter(was ->
                        was.place().equals(callout.place()) && was.dueAt().equals(callout.dueAt()))
                .isPresent();
    }

    /** Calls whoever may be called at the place, or the first place above it at which somebody may. */
    void enter(Callout.Facts facts, Optional<Place> from, Place last) {
        Ladder ladder = Ladders.of(draft, facts);
        Reach reach = PeopleNow.of(draft, facts);
        Set<String> freed = freed(facts, reach);
        var asleep = new TreeMap<>(facts.held());
        asleep.keySet().removeAll(freed);
        Climb.Step step = Climb.enter(ladder, from, asleep, reach, draft.now());
        Callout.Facts after = notices.hold(facts, step.held());
        if (!step.people().isEmpty() || step.asks() || !freed.isEmpty()) {
            boolean stays = step.people().isEmpty() && !step.asks();
            Place place = stays ? from.orElse(last) : step.place().orElseThrow();
            Set<String> people = new LinkedHashSet<>(step.people());
            people.addAll(freed);
            call(after, place, people);
            if (step.asks()) {
                shutIns.ask(facts);
            }
        } else if (step.until().isPresent()) {
            Instant until = step.until().get();
            draft.put(new Callout.Held(after, step.place().orElseThrow(), until));
            draft.log(after, "held until " + until + ": nobody on the ladder can be called before");
        } else if (from.isEmpty() && unheard(after)) {
            draft.log(after, "climbs once more: there are alarms that nobody has heard of");
            enter(after, Optional.of(new Place(ladder.again(), 0, 0)), last);
        } else {
            draft.put(new Callout.Exhausted(notices.awake(after), last, draft.now()));
            boolean nobody = after.told().isEmpty() && after.held().isEmpty();
            draft.log(after, "exhausted: " + (nobody ? "there was nobody to call" : "nobody answered"));
        }
    }

    private boolean unheard(Callout.Facts facts) {
        boolean over = facts.announced() == 0 && !draft.holds(facts);
        return !over && facts.announced() < facts.alarms().size();
    }

    /**
     * What somebody read last is that it is over, and it is not. They hear so at once, and the ladder goes on as it was; when nothing
     * is left of it, or everybody on it sleeps, it is climbed once more.
     */
    void again(Callout callout) {
        Callout.Facts facts = notices.additions().tellBack(callout.facts());
        Place place = callout.place();
        boolean goesOn = callout.kind() == Callout.Kind.CALLING
                && place.next(Ladders.of(draft, facts)).isPresent();
        if (!goesOn || facts.notices() > callout.facts().notices()) {
            draft.log(facts, "calls again: what people were told is over is back");
        }
        if (goesOn) {
            draft.put(callout.with(facts));
        } else {
            enter(facts, Optional.of(new Place(place.climb(), 0, 0)), place);
        }
    }

    private void call(Callout.Facts facts, Place place, Set<String> people) {
        List<Rung> rungs = Ladders.of(draft, facts).rungs();
        Instant next = draft.now()
                .plus(rungs.get(Math.min(place.rung(), rungs.size() - 1)).delay());
        draft.put(new Callout.Calling(facts, place, next));
        Callout.Facts told = notices.awake(notices.tell(facts, people));
        draft.put(new Callout.Calling(told, place, next));
        draft.log(told, "calls rung " + (place.rung() + 1) + ", round " + (place.round() + 1));
    }

    /** Who was left to sleep and need not be any more: the alarm became more urgent, or their quiet hours were changed. */
    private Set<String> freed(Callout.Facts facts, Reach reach) {
        return facts.held().entrySet().stream()
                .filter(one -> one.getValue().isAfter(draft.now().plus(Notices.MOMENT)))
                .map(Map.Entry::getKey)
                .filter(contact -> reach.heldUntil(contact).isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
