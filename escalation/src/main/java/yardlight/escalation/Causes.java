package yardlight.escalation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmRules;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;

/** Alarms of one {@link Cause} climb in one callout, and whoever has answered the worst of them has answered the lesser ones. */
final class Causes {

    private final Draft draft;

    Causes(Draft draft) {
        this.draft = draft;
    }

    /** The other alarms of its cause that are not over, in the order of their keys. */
    List<Alarm> others(Alarm alarm) {
        return Cause.of(draft, alarm).stream()
                .flatMap(cause -> cause.keys().stream()
                        .filter(key -> !key.equals(alarm.key()))
                        .map(draft::alarm)
                        .filter(other -> other.state() != AlarmState.NORMAL)
                        .filter(other ->
                                Cause.of(draft, other).filter(cause::equals).isPresent()))
                .toList();
    }

    /** The callout that goes on for its cause; empty when none does. */
    Optional<Callout> live(Alarm alarm) {
        return others(alarm).stream()
                .filter(other -> other.state().awaitsAnswer())
                .flatMap(other -> other.callout().flatMap(draft::callout).stream())
                .filter(Callout::live)
                .min(Callout.OLDEST_FIRST);
    }

    /**
     * Joins a callout that goes on. What is worse is told at once; what is more urgent is worth the whole ladder, of which some
     * may have been climbed past people who were asleep.
     */
    void join(Callout callout, Alarm alarm, Notices notices, Climbs climbs) {
        boolean further = callout.facts().alarms().stream()
                .map(draft::alarm)
                .filter(others(alarm)::contains)
                .filter(other -> other.state().awaitsAnswer())
                .allMatch(other -> Cause.further(alarm, other));
        takeIn(callout, alarm);
        Callout.Facts facts = draft.callout(callout.id()).orElseThrow().facts();
        boolean raised = alarm.priority().compareTo(facts.priority()) > 0;
        if (raised) {
            climbs.enter(
                    notices.additions().tellWorse(facts.withPriority(alarm.priority())),
                    Optional.of(Place.FOOT),
                    Place.FOOT);
        } else if (further || alarm.priority() == Priority.CRITICAL) {
            draft.put(callout.with(notices.additions().tellWorse(facts)));
        }
    }

    private void takeIn(Callout callout, Alarm alarm) {
        var members = new LinkedHashSet<>(callout.facts().alarms());
        members.add(alarm.key());
        draft.put(callout.with(callout.facts().withAlarms(List.copyOf(members))));
        draft.put(alarm.draft().callout(Optional.of(callout.id())).done());
        draft.log(
                Entry.What.CALLOUT,
                Map.of("site", alarm.key().site(), "callout", callout.id(), "alarm", alarm.id()),
                "callout " + callout.facts().code() + " takes in " + alarm.key().local());
    }

    /**
     * Whether somebody has answered worse of the same cause, which still holds: then this is answered as well, and called again
     * when that is. Nothing critical is, and nothing while any of the cause waits for an answer.
     */
    boolean answered(Alarm alarm) {
        List<Alarm> others = others(alarm);
        boolean waits = others.stream().anyMatch(other -> other.state().awaitsAnswer());
        Optional<Alarm> known = others.stream()
                .filter(other -> !waits && other.state() == AlarmState.ACKNOWLEDGED)
                .filter(other -> !Cause.worse(alarm, other))
                .min(Cause.FURTHEST_FIRST);
        Optional<AlarmRules.Step> step = known.flatMap(other -> with(alarm, other));
        step.ifPresent(taken -> known.flatMap(Alarm::callout)
                .flatMap(draft::callout)
                .filter(callout -> callout.kind() == Callout.Kind.ANSWERED)
                .ifPresent(callout -> takeIn(callout, taken.alarm())));
        return step.isPresent();
    }

    /** Those that are answered with these, because they are lesser ones of the same cause. */
    List<AlarmKey> answeredWith(List<AlarmKey> keys) {
        var more = new ArrayList<AlarmKey>();
        for (AlarmKey key : keys) {
            Alarm worst = draft.alarm(key);
            for (Alarm other : others(worst)) {
                boolean lesser = other.state().awaitsAnswer()
                        && !Cause.worse(other, worst)
                        && (worst.active() || !other.active());
                if (lesser && with(other, worst).isPresent()) {
                    more.add(other.key());
                }
            }
        }
        return more;
    }

    private Optional<AlarmRules.Step> with(Alarm alarm, Alarm answered) {
        AlarmKey key = alarm.key();
        Timing timing = draft.setup().point(key.site(), key.point()).timing();
        Optional<AlarmRules.Step> step = AlarmRules.answeredWith(alarm, answered, timing, draft.now());
        step.ifPresent(taken -> {
            draft.put(taken.alarm());
            draft.log(
                    Entry.What.ANSWER,
                    Map.of("site", key.site(), "alarm", alarm.id()),
                    key.local() + " acknowledged with " + answered.key().local() + " by "
                            + answered.acknowledgedBy().orElseThrow() + ", is now "
                            + taken.alarm().state().word());
        });
        return step;
    }

    /** The alarm and the others of its cause for which people have to be called and no ladder is climbed any more. */
    List<Alarm> uncalled(Alarm alarm) {
        var all = new ArrayList<Alarm>(List.of(alarm));
        others(alarm).stream()
                .filter(other -> other.state().calls())
                .filter(other -> other.callout()
                        .flatMap(draft::callout)
                        .filter(Callout::live)
                        .isEmpty())
                .forEach(all::add);
        return List.copyOf(all);
    }

    /** Who has answered some of it, and had better know that it became worse. */
    List<String> whoHas(Alarm alarm) {
        return others(alarm).stream()
                .filter(other -> other.state() == AlarmState.ACKNOWLEDGED)
                .flatMap(other -> other.acknowledgedBy().stream())
                .distinct()
                .toList();
    }

    /** Of each cause the alarm that comes first. */
    List<Alarm> apart(List<Alarm> alarms) {
        var causes = new LinkedHashSet<Cause>();
        return alarms.stream()
                .filter(alarm -> Cause.of(draft, alarm).map(causes::add).orElse(true))
                .toList();
    }

    /** What this was before it became worse, as far as it still holds: the furthest of what came earlier. */
    Optional<String> before(Alarm alarm) {
        return others(alarm).stream()
                .filter(other -> other.active() && !other.state().withheld())
                .filter(other -> Cause.further(alarm, other))
                .filter(other -> other.receivedAt()
                        .flatMap(at -> alarm.receivedAt().filter(at::isBefore))
                        .isPresent())
                .min(Cause.FURTHEST_FIRST)
                .map(Alarm::condition);
    }
}
