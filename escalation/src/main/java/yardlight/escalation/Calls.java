package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;

/** Whom to call: opens callouts, takes up those that ended a moment ago, gathers them in a flood. */
final class Calls {

    /** A callout that ended because its alarm returned goes on where it was if the alarm is back within this time. */
    private static final Duration SAME_FLUTTER = Duration.ofMinutes(1);

    /** The same of a box that was silent: a bad link comes and goes over minutes. */
    private static final Duration SAME_LINK = Duration.ofMinutes(30);

    private static final Comparator<Alarm> WORST_FIRST =
            Comparator.comparing(Alarm::priority).reversed().thenComparing(Cause.FURTHEST_FIRST);

    private final Draft draft;
    private final Codes codes;
    private final Notices notices;
    private final Climbs climbs;
    private final Endings endings;
    private final Carriers carriers;
    private final Causes causes;

    Calls(Draft draft, Codes codes, Notices notices) {
        this.draft = draft;
        this.codes = codes;
        this.notices = notices;
        this.climbs = new Climbs(draft, notices);
        this.endings = new Endings(draft, notices);
        this.carriers = new Carriers(draft);
        this.causes = new Causes(draft);
    }

    Climbs climbs() {
        return climbs;
    }

    Endings endings() {
        return endings;
    }

    Notices notices() {
        return notices;
    }

    News news() {
        return notices.news();
    }

    Causes causes() {
        return causes;
    }

    /**
     * Calls people for these alarms. What is over by now calls nobody.
     *
     * @param again those of them that had begun before: whatever of their cause was answered, they are called
     */
    void call(Collection<AlarmKey> keys, Set<AlarmKey> again) {
        keys.stream()
                .collect(Collectors.groupingBy(AlarmKey::site, LinkedHashMap::new, Collectors.toList()))
                .forEach((site, ofSite) -> call(site, ofSite, again));
    }

    private void call(String site, List<AlarmKey> keys, Set<AlarmKey> again) {
        List<Alarm> asked = new LinkedHashSet<>(keys).stream().map(draft::alarm).toList();
        List<Alarm> calling = asked.stream()
                .filter(alarm -> alarm.state().calls())
                .filter(alarm -> live(alarm).isEmpty())
                .filter(alarm -> again.contains(alarm.key()) || !causes.answered(alarm))
                .sorted(WORST_FIRST)
                .toList();
        // Those that are taken along too: each may have been in another callout until now.
        List<Alarm> before = Stream.concat(
                        asked.stream(), calling.stream().flatMap(alarm -> causes.uncalled(alarm).stream()))
                .distinct()
                .toList();
        boolean flood = !calling.isEmpty()
                && draft.flood(site).at(draft.now(), Flood.Numbers.USUAL).on();
        List<Alarm> together = calling.stream()
                .filter(alarm -> flood && !ShutInAlarm.is(alarm.key()))
                .toList();
        calling.stream()
                .filter(alarm -> !together.contains(alarm))
                .forEach(alarm -> callOrJoin(draft.alarm(alarm.key()), !again.contains(alarm.key())));
        gather(site, together);
        backAfterItWasOver(asked);
        endings.left(before);
    }

    private void backAfterItWasOver(List<Alarm> asked) {
        asked.stream()
                .flatMap(alarm -> live(draft.alarm(alarm.key())).stream())
                .map(Callout::id)
                .distinct()
                .flatMap(id -> draft.callout(id).stream())
                .filter(callout -> callout.facts().announced() == 0 && draft.holds(callout.facts()))
                .forEach(climbs::again);
    }

    /** The worst of its cause comes first, and may have taken this one along. */
    private void callOrJoin(Alarm alarm, boolean fresh) {
        Optional<Callout> goesOn = causes.live(alarm);
        if (live(alarm).isPresent()) {
            return;
        }
        if (goesOn.isPresent()) {
            causes.join(goesOn.get(), alarm, notices, climbs);
        } else {
            callOrResume(alarm, fresh);
        }
    }

    /** An alarm that is being called became more urgent: whom quiet hours held back may now be called. */
    void raise(AlarmKey key) {
        Alarm alarm = draft.alarm(key);
        live(alarm)
                .filter(callout -> alarm.priority().compareTo(callout.facts().priority()) > 0)
                .ifPresent(callout -> {
                    Callout.Facts facts = callout.facts().withPriority(alarm.priority());
                    climbs.enter(facts, Optional.of(callout.place()), callout.place());
                });
    }

    private Optional<Callout> live(Alarm alarm) {
        return alarm.callout().flatMap(draft::callout).filter(Callout::live);
    }

    private void callOrResume(Alarm alarm, boolean fresh) {
        Optional<Callout.Ended> before = alarm.callout()
                .flatMap(draft::callout)
                .filter(Callout.Ended.class::isInstance)
                .map(Callout.Ended.class::cast)
                .filter(ended -> ended.wasDue().isPresent())
                .filter(ended -> !ended.at().plus(flutter(alarm)).isBefore(draft.now()))
                .filter(ended -> ended.facts().told().stream().allMatch(contact -> carriers.has(contact, 0)));
        if (before.isPresent()) {
            Callout.Ended ended = before.get();
            // Notices that waited for quiet hours were cancelled when it ended; whoever they were for is asked anew.
            Callout.Facts facts = ended.facts().withReached(ended.facts().told(), Map.of());
            draft.put(new Callout.Calling(facts, ended.place(), due(alarm, ended)));
            draft.log(ended.facts(), "goes on, the alarm is back");
        } else {
            openFor(alarm, fresh);
        }
    }

    /**
     * What nobody answered of its cause while a whole ladder was climbed goes along, and whoever answered some of it hears that
     * there is more.
     */
    private void openFor(Alarm alarm, boolean fresh) {
        List<Alarm> all = causes.uncalled(alarm).stream().sorted(WORST_FIRST).toList();
        String id = open(all);
        draft.callout(id).filter(Callout::live).ifPresent(callout -> {
            Callout.Facts facts = callout.facts();
            for (String contact : fresh ? causes.whoHas(alarm) : List.<String>of()) {
                facts = notices.additions().tellToo(facts, contact);
            }
            draft.put(callout.with(facts));
        });
    }

    private static Duration flutter(Alarm alarm) {
        return BoxAlarms.isSilence(alarm.key()) ? SAME_LINK : SAME_FLUTTER;
    }

    /** When the ladder goes on. Of a silence only the time counts in which the box was not there. */
    private Instant due(Alarm alarm, Callout.Ended ended) {
        Instant due = ended.wasDue().orElseThrow();
        return BoxAlarms.isSilence(alarm.key()) ? draft.now().plus(Duration.between(ended.at(), due)) : due;
    }

    private String open(List<Alarm> alarms) {
        Alarm worst = alarms.get(0);
        int code = codes.next();
        String id = worst.id() + "." + code + "-" + Long.toString(draft.now().getEpochSecond(), 36);
        List<AlarmKey> keys = alarms.stream().map(Alarm::key).toList();
        String site = worst.key().site();
        var facts = new Callout.Facts(
                id,
                code,
                site,
                ShutInAlarm.is(worst.key())
                        ? ShutInAlarm.EVERYONE.id()
                        : Ladders.of(draft, site).id(),
                worst.priority(),
                keys,
                draft.now(),
                0,
                keys.size(),
                new TreeSet<>(),
                new TreeMap<>());
        alarms.forEach(alarm -> draft.put(alarm.draft().callout(Optional.of(id)).done()));
        climbs.enter(facts, Optional.of(Place.FOOT), Place.FOOT);
        return id;
    }

    /**
     * In a flood all alarms of the site are one callout: the oldest one goes on for all of them. But that the site was not shut in
     * has its own ladder and is for everybody at once: among many it would wait for the ladder of the others, or they would have
     * everybody called.
     */
    private void gather(String site, List<Alarm> calling) {
        if (calling.isEmpty()) {
            return;
        }
        List<Callout> open = draft.calloutsAt(site).stream()
                .filter(callout -> !ShutInAlarm.is(callout.facts()))
                .toList();
        if (open.isEmpty()) {
            open(calling);
            return;
        }
        Callout first = open.get(0);
        var members = new ArrayList<>(first.facts().alarms());
        boolean unheard = open.stream()
                .skip(1)
                .anyMatch(other -> !draft.unsent(other.id()).isEmpty());
        for (Callout other : open.subList(1, open.size())) {
            members.addAll(other.facts().alarms());
            endings.end(other, "joined the callout with code " + first.facts().code());
        }
        calling.forEach(alarm -> members.add(alarm.key()));
        members.stream()
                .map(draft::alarm)
                .filter(alarm -> !alarm.callout().equals(Optional.of(first.id())))
                .forEach(alarm ->
                        draft.put(alarm.draft().callout(Optional.of(first.id())).done()));
        Priority worst = members.stream()
                .map(key -> draft.alarm(key).priority())
                .reduce(first.facts().priority(), Priority::orHigher);
        boolean raised = worst.compareTo(first.facts().priority()) > 0;
        Callout.Facts facts = first.facts()
                .withAlarms(new LinkedHashSet<>(members).stream().toList())
                .withPriority(worst);
        if (raised) {
            climbs.enter(facts, Optional.of(first.place()), first.place());
        } else {
            draft.put(first.with(facts));
            draft.put(first.with(notices.additions().tellMore(facts, unheard)));
        }
    }
}
