package yardlight.escalation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.rehearsal.Happening;
import yardlight.escalation.setup.Site;

/** What must hold of alarms of one cause on every night. */
final class CausePromises {

    /** Worked out anew, in another way than the rules do. */
    private static final List<List<String>> CAUSES =
            List.of(List.of("rising-fast", "high", "high-high", "overflow"), List.of("low", "low-low"));

    private final Map<AlarmKey, Alarm> alarms = new HashMap<>();
    private final Map<String, Callout> callouts = new HashMap<>();

    private CausePromises() {}

    static void hold(RandomNight night) {
        var promises = new CausePromises();
        night.happenings().forEach(promises::step);
    }

    private void step(Happening step) {
        Map<AlarmKey, Alarm> before = new HashMap<>(alarms);
        step.decision().changes().alarms().forEach(alarm -> alarms.put(alarm.key(), alarm));
        step.decision().changes().callouts().forEach(callout -> callouts.put(callout.id(), callout));
        for (Alarm alarm : step.decision().changes().alarms()) {
            Alarm was = before.getOrDefault(alarm.key(), Alarm.normal(alarm.key()));
            boolean person =
                    step.stimulus() instanceof Stimulus.Acknowledge || step.stimulus() instanceof Stimulus.AnswerNotice;
            boolean begins = alarm.active() && !was.active();
            if (begins && alarm.state() == AlarmState.ACKNOWLEDGED && !person && !chatters(was, alarm)) {
                holds(anAnswer(alarm), "nothing is silent that nobody answered", alarm);
            }
            if (alarm.state() == AlarmState.UNACKNOWLEDGED) {
                oneCallout(alarm);
            }
            was.callout()
                    .filter(left -> was.occurrence() == alarm.occurrence())
                    .filter(left ->
                            alarm.callout().filter(now -> !now.equals(left)).isPresent())
                    .map(callouts::get)
                    .ifPresent(left -> holds(goesOn(left), "what joined another callout leaves none behind", left));
        }
    }

    /** Whether it is not exhausted, or has an alarm of its own still. */
    private boolean goesOn(Callout left) {
        return left.kind() != Callout.Kind.EXHAUSTED
                || left.facts().alarms().stream()
                        .map(alarms::get)
                        .anyMatch(other -> other != null
                                && other.callout().filter(left.id()::equals).isPresent());
    }

    /** Somebody who has just answered its last flutter is not asked again. */
    private static boolean chatters(Alarm was, Alarm alarm) {
        return was.acknowledgedAt().isPresent() && was.acknowledgedAt().equals(alarm.acknowledgedAt());
    }

    /** By somebody, to what held then and holds still, was no less urgent and had gone no less far. */
    private boolean anAnswer(Alarm alarm) {
        return alarm.priority() != Priority.CRITICAL
                && cause(alarm.key()).stream()
                        .map(condition ->
                                new AlarmKey(alarm.key().site(), alarm.key().point(), condition))
                        .filter(key -> !key.equals(alarm.key()))
                        .map(alarms::get)
                        .anyMatch(other -> other != null
                                && other.active()
                                && other.state() == AlarmState.ACKNOWLEDGED
                                && other.acknowledgedBy().equals(alarm.acknowledgedBy())
                                && other.priority().atLeast(alarm.priority())
                                && step(other) >= step(alarm));
    }

    private static int step(Alarm alarm) {
        return cause(alarm.key()).indexOf(alarm.key().condition());
    }

    private static List<String> cause(AlarmKey key) {
        return CAUSES.stream()
                .filter(one -> one.contains(key.condition()))
                .findFirst()
                .orElse(List.of());
    }

    /** No two ladders are climbed at once for one cause. */
    private void oneCallout(Alarm alarm) {
        if (alarm.key().site().equals(Site.GATEWAY)) {
            return;
        }
        long live = cause(alarm.key()).stream()
                .map(condition -> new AlarmKey(alarm.key().site(), alarm.key().point(), condition))
                .map(alarms::get)
                .filter(other -> other != null && other.state() == AlarmState.UNACKNOWLEDGED)
                .map(Alarm::callout)
                .flatMap(Optional::stream)
                .distinct()
                .map(callouts::get)
                .filter(callout -> callout != null && callout.live())
                .count();
        holds(live <= 1, "one cause climbs in one callout", alarm);
    }

    private static void holds(boolean promise, String name, Object what) {
        if (!promise) {
            throw new AssertionError(name + ": " + what);
        }
    }
}
