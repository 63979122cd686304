package yardlight.escalation;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Climb;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.ladder.Reach;
import yardlight.escalation.setup.Site;

/** Whom to call and when: opens callouts, moves them up their ladder, and ends them. */
final class Calls {

    /** A callout that ended because its alarm returned goes on where it was if the alarm is back within this time. */
    private static final Duration SAME_FLUTTER = Duration.ofMinutes(1);

    private static final Comparator<Alarm> WORST_FIRST =
            Comparator.comparing(Alarm::priority).reversed().thenComparing(Alarm::key);

    private final Draft draft;
    private final Codes codes;
    private final Notices notices;

    Calls(Draft draft, Codes codes, Notices notices) {
        this.draft = draft;
        this.codes = codes;
        this.notices = notices;
    }

    Notices notices() {
        return notices;
    }

    /** Calls people for these alarms of one site. What is over by now calls nobody. */
    void call(String site, Collection<AlarmKey> keys) {
        List<Alarm> calling = new LinkedHashSet<>(keys)
                .stream()
                        .map(draft::alarm)
                        .filter(Calls::unanswered)
                        .filter(alarm -> live(alarm).isEmpty())
                        .sorted(WORST_FIRST)
                        .toList();
        if (calling.isEmpty()) {
            return;
        }
        if (draft.flood(site).on()) {
            gather(site, calling);
        } else {
            calling.forEach(this::callOrResume);
        }
    }

    /** An alarm that is being called became more urgent: whom quiet hours held back may now be called. */
    void raise(AlarmKey key) {
        Alarm alarm = draft.alarm(key);
        live(alarm)
                .filter(callout -> alarm.priority().compareTo(callout.facts().priority()) > 0)
                .ifPresent(callout -> {
                    Callout.Facts facts = callout.facts().withPriority(alarm.priority());
                    enter(facts, Optional.of(callout.place()), callout.place());
                });
    }

    /** A callout's time has come: the next round, the next rung, the next climb, or the end. */
    Answer due(String id) {
        draft.callout(id).filter(Callout::live).ifPresent(callout -> {
            if (callout.dueAt().filter(draft.now()::isBefore).isPresent()) {
                return;
            }
            Optional<Place> next = callout.kind() == Callout.Kind.HELD
                    ? Optional.of(callout.place())
                    : callout.place().next(ladder(callout.facts().site()));
            enter(callout.facts(), next, callout.place());
        });
        return new Answer.Done();
    }

    /** A carrier said what became of a notice. A refusal by the last line of everybody on a rung moves on at once. */
    Answer fate(Stimulus.NoticeFate fate) {
        draft.notice(fate.notice())
                .flatMap(notice -> notices.fate(notice, fate))
                .ifPresent(refused -> refused.callouts()
                        .forEach(id -> draft.callout(id).ifPresent(callout -> notReached(callout, refused.contact()))));
        return new Answer.Done();
    }

    /** Somebody answered these alarms, perhaps after the ladder was exhausted. */
    void answered(String site, List<AlarmKey> keys, String by) {
        keys.stream()
                .flatMap(key -> draft.alarm(key).callout().flatMap(draft::callout).stream())
                .filter(callout -> callout.kind() == Callout.Kind.EXHAUSTED)
                .filter(callout -> over(callout))
                .forEach(callout -> finish(callout, Optional.of(by)));
        settle(site, Optional.of(by));
    }

    /** Ends the callouts of a site that have nothing left to wait for. */
    void settle(String site, Optional<String> answeredBy) {
        boolean known = draft.setup().sites().containsKey(site);
        for (Callout callout : draft.calloutsAt(site)) {
            if (!known) {
                end(callout, "the site is no longer set up");
            } else if (over(callout)) {
                finish(callout, answeredBy);
            }
        }
    }

    private void finish(Callout callout, Optional<String> answeredBy) {
        if (answeredBy.isPresent()) {
            String by = answeredBy.get();
            draft.put(new Callout.Answered(callout.facts(), callout.place(), by, draft.now()));
            log(callout.facts(), "answered by " + by);
            notices.over(callout, true);
        } else {
            AlarmState state = draft.alarm(callout.facts().alarms().get(0)).state();
            end(callout, state.withheld() ? state.word() : "returned to normal");
        }
    }

    private void end(Callout callout, String reason) {
        draft.put(new Callout.Ended(callout.facts(), callout.place(), callout.dueAt(), reason, draft.now()));
        log(callout.facts(), "ended: " + reason);
        notices.over(callout, false);
    }

    private boolean over(Callout callout) {
        return callout.facts().alarms().stream().map(draft::alarm).noneMatch(alarm -> waits(alarm, callout));
    }

    private boolean waits(Alarm alarm, Callout callout) {
        boolean mine = alarm.callout().filter(callout.id()::equals).isPresent();
        boolean untilNormal = ladder(alarm.key().site()).endsWhen() == Ladder.EndsWhen.NORMAL;
        return mine && (untilNormal ? unanswered(alarm) : alarm.state().awaitsAnswer());
    }

    private static boolean unanswered(Alarm alarm) {
        return alarm.state() == AlarmState.UNACKNOWLEDGED || alarm.state() == AlarmState.LATCHED_UNACKNOWLEDGED;
    }

    private Optional<Callout> live(Alarm alarm) {
        return alarm.callout().flatMap(draft::callout).filter(Callout::live);
    }

    private void callOrResume(Alarm alarm) {
        Optional<Callout.Ended> before = alarm.callout()
                .flatMap(draft::callout)
                .filter(Callout.Ended.class::isInstance)
                .map(Callout.Ended.class::cast)
                .filter(ended -> ended.wasDue().isPresent())
                .filter(ended -> !ended.at().plus(SAME_FLUTTER).isBefore(draft.now()));
        if (before.isPresent()) {
            Callout.Ended ended = before.get();
            draft.put(new Callout.Calling(
                    ended.facts(), ended.place(), ended.wasDue().get()));
            log(ended.facts(), "goes on, the alarm is back");
        } else {
            open(List.of(alarm));
        }
    }

    private void open(List<Alarm> alarms) {
        Alarm worst = alarms.get(0);
        int code = codes.next();
        String id = worst.id() + "." + code + "-" + Long.toString(draft.now().getEpochSecond(), 36);
        List<AlarmKey> keys = alarms.stream().map(Alarm::key).toList();
        String site = worst.key().site();
        var facts = new Callout.Facts(
                id,
                code,
                site,
                ladder(site).id(),
                worst.priority(),
                keys,
                draft.now(),
                0,
                new TreeSet<>(),
                new TreeMap<>());
        alarms.forEach(alarm -> draft.put(alarm.draft().callout(Optional.of(id)).done()));
        log(facts, "started");
        enter(facts, Optional.of(Place.FOOT), Place.FOOT);
    }

    /** In a flood all alarms of the site are one callout: the oldest one goes on for all of them. */
    private void gather(String site, List<Alarm> calling) {
        List<Callout> open = draft.calloutsAt(site);
        if (open.isEmpty()) {
            open(calling);
            return;
        }
        Callout first = open.get(0);
        var members = new ArrayList<>(first.facts().alarms());
        for (Callout other : open.subList(1, open.size())) {
            members.addAll(other.facts().alarms());
            end(other, "joined the callout with code " + first.facts().code());
        }
        calling.forEach(alarm -> members.add(alarm.key()));
        members.forEach(key -> draft.put(
                draft.alarm(key).draft().callout(Optional.of(first.id())).done()));
        Priority worst = members.stream()
                .map(key -> draft.alarm(key).priority())
                .reduce(first.facts().priority(), Priority::orHigher);
        boolean raised = worst.compareTo(first.facts().priority()) > 0;
        Callout.Facts facts = first.facts()
                .withAlarms(new LinkedHashSet<>(members).stream().toList())
                .withPriority(worst);
        if (raised) {
            enter(facts, Optional.of(first.place()), first.place());
        } else {
            draft.put(first.with(facts));
            draft.put(first.with(notices.tellMore(facts)));
        }
    }

    private void enter(Callout.Facts facts, Optional<Place> from, Place last) {
        Ladder ladder = ladder(facts.site());
        Climb.Step step = Climb.enter(ladder, from, facts.held(), new PeopleNow(draft, facts.priority()), draft.now());
        Callout.Facts after = notices.hold(facts, step.held());
        if (step.exhausted()) {
            draft.put(new Callout.Exhausted(after, last, draft.now()));
            log(after, "exhausted: nobody answered");
        } else if (step.people().isEmpty()) {
            var until = step.until().orElseThrow();
            draft.put(new Callout.Held(after, step.place().orElseThrow(), until));
            log(after, "held until " + until + ": everybody on the ladder has quiet hours");
        } else {
            Place place = step.place().orElseThrow();
            draft.put(new Callout.Calling(after, place, step.until().orElseThrow()));
            Callout.Facts told = notices.tell(after, step.people());
            draft.put(new Callout.Calling(told, place, step.until().orElseThrow()));
            log(told, "calls rung " + (place.rung() + 1) + ", round " + (place.round() + 1));
        }
    }

    private void notReached(Callout callout, String contact) {
        if (callout.kind() != Callout.Kind.CALLING) {
            return;
        }
        var told = new TreeSet<>(callout.facts().told());
        told.remove(contact);
        Callout.Facts facts = callout.facts().withReached(told, callout.facts().held());
        Ladder ladder = ladder(facts.site());
        Place place = callout.place();
        Reach reach = new PeopleNow(draft, facts.priority());
        boolean anybody = place.rung() < ladder.rungs().size()
                && reach.people(ladder.rungs().get(place.rung())).stream().anyMatch(told::contains);
        if (anybody) {
            draft.put(callout.with(facts));
        } else {
            log(facts, "goes on at once: nobody on the rung could be reached");
            enter(facts, place.nextRung(ladder), place);
        }
    }

    private Ladder ladder(String site) {
        Site known = draft.setup().sites().get(site);
        Ladder ladder = known == null ? null : draft.setup().ladders().get(known.ladder());
        return ladder != null ? ladder : PeopleNow.EVERYBODY_ONCE;
    }

    private void log(Callout.Facts facts, String words) {
        draft.log(
                Entry.What.CALLOUT,
                Map.of(
                        "site",
                        facts.site(),
                        "callout",
                        facts.id(),
                        "alarm",
                        draft.alarm(facts.alarms().get(0)).id()),
                "callout " + facts.code() + " " + words);
    }
}
