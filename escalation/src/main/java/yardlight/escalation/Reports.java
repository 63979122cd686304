package yardlight.escalation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmRules;
import yardlight.escalation.alarm.AlarmTrigger;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** What boxes say, and what the alarms make of it: in the order of the time at which it happened. */
final class Reports {

    private final Draft draft;
    private final Calls calls;
    private final Withholding withholding;
    private final Set<AlarmKey> calling = new LinkedHashSet<>();
    private final Set<AlarmKey> again = new LinkedHashSet<>();
    private final Set<AlarmKey> raised = new LinkedHashSet<>();
    private final Set<AlarmKey> returned = new LinkedHashSet<>();
    private final Set<String> elsewhere = new LinkedHashSet<>();

    Reports(Draft draft, Calls calls) {
        this.draft = draft;
        this.calls = calls;
        this.withholding = new Withholding(draft);
    }

    /** A box's post. Whatever it says, it is a sign of life too. */
    Answer take(Stimulus.Reported posted) {
        Box box = draft.setup().boxes().get(posted.box());
        if (box == null) {
            return new Answer.Refusal("box must be set up: " + posted.box());
        }
        new Silence(draft, calls).heard(box);
        var ends = new ShutInEnds(draft, calls.notices(), this);
        var answers = new LinkedHashSet<AlarmKey>();
        var results = new Answer.Result[posted.reports().size()];
        Map<AlarmKey, Integer> last = new LinkedHashMap<>();
        IntStream.range(0, results.length)
                .boxed()
                .sorted(Comparator.comparing(i -> posted.reports().get(i).at()))
                .forEach(i -> {
                    Report report = posted.reports().get(i);
                    ShutInEnds.Heard heard = ends.heard(report);
                    results[i] = report(report, Priority.MEDIUM).noting(heard.note());
                    if (heard.answers()) {
                        answers.add(report.key());
                    }
                    last.put(report.key(), i);
                });
        last.forEach((key, i) -> results[i] = settled(key, results[i]));
        answers.forEach(this::seen);
        finish(box.site());
        return new Answer.Results(List.of(results));
    }

    /** What was found in readings, in the order in which they were taken; {@link #finish} has to follow. */
    void findings(List<Report> found) {
        found.forEach(one -> report(one, Priority.MEDIUM));
        found.stream()
                .map(Report::key)
                .distinct()
                .forEach(key -> settled(key, result(Outcome.NOTED, draft.alarm(key))));
    }

    /** What the gateway itself found out about a box; {@link #finish} has to follow. */
    Answer.Result report(Report report, Priority otherwise) {
        AlarmKey key = report.key();
        Point point = draft.setup().point(key.site(), key.point());
        Alarm before = align(draft.alarm(key));
        AlarmRules.Step step = AlarmRules.report(
                before, report, point.timing(), point.priority().orElse(otherwise), draft.now());
        draft.log(
                Entry.What.EVENT,
                about(step.alarm()),
                AlarmWords.reported(report) + ": " + step.outcome().word());
        take(before, step);
        boolean known = step.alarm().occurrence() > 0;
        return new Answer.Result(
                step.outcome(), known ? Optional.of(step.alarm().id()) : Optional.empty());
    }

    /** The answer to a request: people are told of it in other words, and are not called for it. */
    private void seen(AlarmKey key) {
        AlarmRules.acknowledge(draft.alarm(key), "shut-in", timing(key), draft.now())
                .ifPresent(step -> take(draft.alarm(key), step));
        calling.remove(key);
        raised.remove(key);
    }

    /** A delay that began in a backlog may have run out by now, once nothing later undid it. */
    private Answer.Result settled(AlarmKey key, Answer.Result told) {
        Alarm before = draft.alarm(key);
        Timing timing = timing(key);
        AlarmRules.Step step = AlarmRules.due(before, timing, draft.now());
        if (step.alarm().equals(before)) {
            return told;
        }
        take(before, step);
        boolean withheld = step.alarm().state().withheld();
        boolean turned = step.alarm().active() != before.active();
        Outcome outcome = step.alarm().active() ? Outcome.OCCURRED : Outcome.RETURNED;
        return result(withheld || !turned ? told.outcome() : outcome, step.alarm())
                .noting(told.note());
    }

    private static Answer.Result result(Outcome outcome, Alarm alarm) {
        return new Answer.Result(outcome, alarm.occurrence() > 0 ? Optional.of(alarm.id()) : Optional.empty());
    }

    /** An alarm's own time has come: a delay ran out, a shelf ended. */
    Answer due(AlarmKey key) {
        Alarm before = draft.alarm(key);
        take(before, AlarmRules.due(before, timing(key), draft.now()));
        resume(key, false);
        return new Answer.Done();
    }

    /** An alarm is taken for something else, which may explain others or no longer do so. */
    void realign(String site) {
        new ArrayList<>(draft.alarmsAt(site)).forEach(this::align);
        finish(site);
    }

    /** An alarm is called anew, whatever was answered before. */
    void again(AlarmKey key) {
        Alarm before = draft.alarm(key);
        AlarmRules.again(before, timing(key)).ifPresent(step -> take(before, step));
    }

    /** An alarm is back with people: it calls if it has to, unless something withholds it. */
    void resume(AlarmKey key, boolean calls) {
        if (calls) {
            calling.add(key);
            again.add(key);
        }
        align(draft.alarm(key));
        finish(key.site());
    }

    /** Another setup: points go out of service and come back, sites vanish. */
    Answer setup(Stimulus.SetupChanged changed) {
        Set<String> sites = new LinkedHashSet<>(draft.setup().sites().keySet());
        sites.addAll(changed.setup().sites().keySet());
        sites.add(Site.GATEWAY);
        Setup before = draft.setup();
        draft.setup(changed.setup());
        draft.log(Entry.What.SETUP, Map.of("person", changed.by()), "setup changed by " + changed.by());
        new Silence(draft, calls).setup(before);
        AllsWells.setup(draft, before);
        for (String site : sites) {
            draft.alarmsAt(site).forEach(this::align);
            if (before.site(site).isEmpty()) {
                draft.alarmsAt(site).stream()
                        .filter(alarm -> alarm.state().calls())
                        .forEach(alarm -> {
                            calling.add(alarm.key());
                            again.add(alarm.key());
                        });
            }
            finish(site);
            if (draft.setup().site(site).isPresent()) {
                calls.endings().settleAll(site);
                draft.calloutsAt(site).forEach(calls.climbs()::reconsider);
            }
        }
        return new Answer.Done();
    }

    /** Calls for what calls by the end of all reports, and ends what has nothing left to wait for. */
    void finish(String site) {
        elsewhere.add(site);
        for (String each : elsewhere) {
            if (draft.setup().site(each).isEmpty()) {
                calls.endings().abandon(each);
                Stream.of(calling, again, raised, returned)
                        .forEach(keys -> keys.removeIf(key -> key.site().equals(each)));
            }
        }
        calls.call(calling, again);
        // An alarm that came back more urgent than it was is raised as well.
        raised.addAll(calling);
        raised.forEach(calls::raise);
        elsewhere.stream()
                .filter(each -> draft.setup().site(each).isPresent())
                .forEach(each -> calls.endings().settle(each, Optional.empty()));
        returned.forEach(calls.news()::over);
        Stream.of(calling, again, raised, returned, elsewhere).forEach(Set::clear);
    }

    private void take(Alarm before, AlarmRules.Step step) {
        Alarm after = step.alarm();
        draft.put(after);
        if (step.calls()) {
            calling.add(after.key());
        }
        if (step.calls() && before.active()) {
            again.add(after.key());
        }
        if (step.raised()) {
            raised.add(after.key());
        }
        if (before.active() && !after.active() && !after.state().withheld()) {
            returned.add(after.key());
        }
        if (after.state() != before.state()) {
            draft.log(
                    Entry.What.ALARM,
                    about(after),
                    after.key().local() + " is now " + AlarmWords.changed(before, after, timing(after.key())));
        }
        if (after.active() && !before.active() && step.calls()) {
            count(after.key().site());
        }
        boolean explains =
                draft.setup().explains(after.key().site(), after.key().point() + "/" + after.condition())
                        || BoxAlarms.feed(after.key()).isPresent();
        if (explains && (after.active() != before.active() || after.state() != before.state())) {
            new ArrayList<>(draft.alarmsAt(after.key().site())).forEach(this::align);
            BoxAlarms.feed(after.key()).ifPresent(feed -> elsewhere(after.key().site(), feed));
        }
    }

    /** A silence that boxes on the feed share with other sites may be an alarm of one of those. */
    private void elsewhere(String site, String feed) {
        draft.setup().boxesAt(site).stream()
                .filter(box -> box.feed().equals(Optional.of(feed)))
                .flatMap(box -> draft.box(box.id()).filter(BoxWatch::silent).stream())
                .flatMap(watch -> watch.absence().flatMap(draft::absence).stream())
                .map(Absence::key)
                .filter(key -> !key.site().equals(site))
                .distinct()
                .toList()
                .forEach(key -> {
                    elsewhere.add(key.site());
                    align(draft.alarm(key));
                });
    }

    private void count(String site) {
        Flood before = draft.flood(site);
        Flood after = before.plus(draft.now(), Flood.Numbers.USUAL);
        draft.put(site, after);
        if (before.on() != after.on()) {
            draft.log(Entry.What.FLOOD, Map.of("site", site), after.on() ? "flood of alarms" : "the flood is over");
        }
    }

    /** Withholds an alarm while its point is out of service or another alarm explains it, and gives it back after. */
    private Alarm align(Alarm alarm) {
        Point point = draft.setup().point(alarm.key().site(), alarm.key().point());
        Optional<AlarmTrigger> trigger = withholding.trigger(alarm, point);
        if (trigger.isEmpty()) {
            return alarm;
        }
        return AlarmRules.move(alarm, trigger.get(), point.timing())
                .map(step -> {
                    take(alarm, step);
                    return draft.alarm(alarm.key());
                })
                .orElse(alarm);
    }

    private Timing timing(AlarmKey key) {
        return draft.setup().point(key.site(), key.point()).timing();
    }

    private static Map<String, String> about(Alarm alarm) {
        return Map.of("site", alarm.key().site(), "alarm", alarm.id());
    }
}
