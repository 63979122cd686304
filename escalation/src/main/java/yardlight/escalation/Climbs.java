package yardlight.escalation;

import java.util.Optional;
import java.util.TreeSet;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Climb;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.ladder.Reach;

/** Moves callouts up their ladders: the next round, the next rung, the next climb, the end. */
final class Climbs {

    private final Draft draft;
    private final Notices notices;

    Climbs(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
    }

    /** A callout's time has come: the next round, the next rung, the next climb, or the end. */
    Answer due(String id) {
        draft.callout(id).filter(Callout::live).ifPresent(callout -> {
            if (callout.dueAt().filter(draft.now()::isBefore).isPresent()) {
                return;
            }
            Optional<Place> next = callout.kind() == Callout.Kind.HELD
                    ? Optional.of(callout.place())
                    : callout.place().next(draft.ladder(callout.facts().site()));
            enter(callout.facts(), next, callout.place());
        });
        return new Answer.Done();
    }

    /** A contact could not be reached by any line. If that leaves nobody on the rung, the next one is called at once. */
    void notReached(Callout callout, String contact) {
        if (callout.kind() != Callout.Kind.CALLING) {
            return;
        }
        var told = new TreeSet<>(callout.facts().told());
        told.remove(contact);
        Callout.Facts facts = callout.facts().withReached(told, callout.facts().held());
        Ladder ladder = draft.ladder(facts.site());
        Place place = callout.place();
        Reach reach = new PeopleNow(draft, facts.priority());
        boolean anybody = place.rung() < ladder.rungs().size()
                && reach.people(ladder.rungs().get(place.rung())).stream().anyMatch(told::contains);
        if (anybody) {
            draft.put(callout.with(facts));
        } else {
            draft.log(facts, "goes on at once: nobody on the rung could be reached");
            enter(facts, place.nextRung(ladder), place);
        }
    }

    /** Calls whoever may be called at the place, or the first place above it at which somebody may. */
    void enter(Callout.Facts facts, Optional<Place> from, Place last) {
        Ladder ladder = draft.ladder(facts.site());
        Climb.Step step = Climb.enter(ladder, from, facts.held(), new PeopleNow(draft, facts.priority()), draft.now());
        Callout.Facts after = notices.hold(facts, step.held());
        if (step.exhausted()) {
            draft.put(new Callout.Exhausted(notices.awake(after), last, draft.now()));
            draft.log(after, "exhausted: nobody answered");
        } else if (step.people().isEmpty()) {
            var until = step.until().orElseThrow();
            draft.put(new Callout.Held(after, step.place().orElseThrow(), until));
            draft.log(after, "held until " + until + ": everybody on the ladder has quiet hours");
        } else {
            Place place = step.place().orElseThrow();
            draft.put(new Callout.Calling(after, place, step.until().orElseThrow()));
            Callout.Facts told = notices.awake(notices.tell(after, step.people()));
            draft.put(new Callout.Calling(told, place, step.until().orElseThrow()));
            draft.log(told, "calls rung " + (place.rung() + 1) + ", round " + (place.round() + 1));
        }
    }
}
