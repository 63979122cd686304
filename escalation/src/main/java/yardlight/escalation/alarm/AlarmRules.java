package yardlight.escalation.alarm;

import java.time.Instant;
import java.util.Optional;

/**
 * What a report, a due time or a person does to one alarm. The moves themselves stand in {@link AlarmTransitions}; here
 * are the delays, the counting and the facts that its guards ask for.
 */
public final class AlarmRules {

    /**
     * @param alarm as it stands now
     * @param outcome what the report did
     * @param calls whether somebody has to be called for it anew
     * @param raised whether it became more urgent than it was
     */
    public record Step(Alarm alarm, Outcome outcome, boolean calls, boolean raised) {}

    /** A report with what is needed to judge it. */
    private record Arrival(Report report, Priority said, Timing timing, Instant now) {}

    private AlarmRules() {}

    /**
     * Takes a report. Delays are judged at the report's own time, so that in a backlog the next report can still undo
     * what this one began; what is due by the time of arrival is left to {@link #due}, to be called after the last one.
     *
     * @param priority what the alarm gets if the report does not say
     * @param now time of arrival, at or after {@code report.at()}
     */
    public static Step report(Alarm before, Report report, Timing timing, Priority priority, Instant now) {
        if (older(report, before)) {
            return new Step(before, Outcome.NOTED, false, false);
        }
        Step due = due(before, timing, report.at());
        AlarmDraft draft = due.alarm().draft();
        draft.box = report.box();
        if (report.declared()) {
            draft.declaredAt = Optional.of(report.at());
        }
        var arrival = new Arrival(report, report.priority().orElse(priority), timing, now);
        Step step = report.active() ? activate(draft, arrival) : clear(draft, arrival);
        AlarmState state = step.alarm().state();
        boolean calls = (due.calls() || step.calls()) && state.calls();
        return new Step(step.alarm(), withheldOutcome(state).orElse(step.outcome()), calls, step.raised());
    }

    /** Does what is due by {@code now} although nobody reports. Without anything due the alarm comes back as it is. */
    public static Step due(Alarm before, Timing timing, Instant now) {
        Alarm alarm = before;
        boolean calls = false;
        while (alarm.dueAt(timing).filter(at -> !at.isAfter(now)).isPresent()) {
            Instant at = alarm.dueAt(timing).orElseThrow();
            Step step = fire(alarm, timing, at, now);
            calls |= step.calls();
            alarm = step.alarm();
        }
        return new Step(alarm, Outcome.NOTED, calls && alarm.state().calls(), false);
    }

    /** A person says that they know. Empty when the state does not allow it. */
    public static Optional<Step> acknowledge(Alarm before, String by, Timing timing, Instant now) {
        AlarmDraft draft = before.draft().seen(true);
        draft.acknowledgedAt = Optional.of(now);
        draft.acknowledgedBy = Optional.of(by);
        draft.realarmAt = before.active() ? timing.realarm().map(now::plus) : Optional.empty();
        return move(draft, AlarmTrigger.ACKNOWLEDGE, timing);
    }

    /** A person puts the alarm aside until an instant. Who shelves an alarm has seen it. */
    public static Optional<Step> shelve(Alarm before, Instant until, Timing timing) {
        AlarmDraft draft = before.draft().seen(true).shelvedUntil(Optional.of(until));
        return move(draft, AlarmTrigger.SHELVE, timing);
    }

    /** Any other move by a person or by the setup: unshelve, reset, suppress, unsuppress, remove, restore. */
    public static Optional<Step> move(Alarm before, AlarmTrigger trigger, Timing timing) {
        AlarmDraft draft = before.draft();
        draft.shelvedUntil = Optional.empty();
        if (trigger == AlarmTrigger.RESET) {
            draft.latched = false;
        }
        return move(draft, trigger, timing);
    }

    static Optional<Step> move(AlarmDraft draft, AlarmTrigger trigger, Timing timing) {
        var facts = new AlarmTransitions.Facts(
                draft.active,
                draft.seen,
                timing.latching(),
                draft.latched,
                draft.seen && trigger == AlarmTrigger.OCCUR);
        return AlarmTransitions.next(draft.state, trigger, facts)
                .map(next -> new Step(
                        draft.state(next).done(),
                        Outcome.NOTED,
                        next.calls() && trigger != AlarmTrigger.RETURN,
                        false));
    }

    /** Only times of one clock can be compared: another box may have another one. */
    private static boolean older(Report report, Alarm before) {
        return report.declared()
                && report.box().equals(before.box())
                && before.declaredAt().filter(report.at()::isBefore).isPresent();
    }

    private static Step activate(AlarmDraft draft, Arrival arrival) {
        if (draft.active) {
            return repeat(draft, arrival);
        }
        Instant at = arrival.report().at();
        if (draft.pendingSince.isEmpty()) {
            draft.pendingSince = Optional.of(at);
            if (Occurrence.anew(draft)) {
                draft.receivedAt = Optional.of(arrival.now());
                draft.priority = arrival.said();
            }
        }
        draft.priority = draft.priority.orHigher(arrival.said());
        draft.measured = arrival.report().measured();
        Instant occursAt =
                draft.pendingSince.orElseThrow().plus(arrival.timing().onDelay());
        return occursAt.isAfter(at)
                ? new Step(draft.done(), Outcome.DELAYED, false, false)
                : Occurrence.begin(draft, arrival.timing());
    }

    private static Step repeat(AlarmDraft draft, Arrival arrival) {
        if (draft.clearingSince.isPresent()) {
            draft.clearingSince = Optional.empty();
            Occurrence.remember(draft, arrival.report().at());
        }
        draft.repeats++;
        draft.measured = arrival.report().measured();
        boolean raised = arrival.said().compareTo(draft.priority) > 0;
        draft.priority = draft.priority.orHigher(arrival.said());
        return raised ? raise(draft, arrival.timing()) : new Step(draft.done(), Outcome.REPEATED, false, false);
    }

    /** An answer was given to something less urgent; a withheld alarm keeps that for the time when it comes back. */
    private static Step raise(AlarmDraft draft, Timing timing) {
        draft.unanswered();
        boolean told = !draft.state.withheld();
        boolean calls = draft.state == AlarmState.ACKNOWLEDGED;
        Alarm alarm =
                calls ? move(draft, AlarmTrigger.REALARM, timing).orElseThrow().alarm() : draft.done();
        return new Step(alarm, Outcome.REPEATED, calls, told);
    }

    private static Step clear(AlarmDraft draft, Arrival arrival) {
        Instant at = arrival.report().at();
        draft.pendingSince = Optional.empty();
        if (!draft.active) {
            return new Step(draft.done(), Outcome.NOTED, false, false);
        }
        if (draft.clearingSince.isEmpty()) {
            draft.clearingSince = Optional.of(at);
        }
        Step after = due(draft.done(), arrival.timing(), at);
        return new Step(after.alarm(), after.alarm().active() ? Outcome.NOTED : Outcome.RETURNED, after.calls(), false);
    }

    private static Step fire(Alarm alarm, Timing timing, Instant at, Instant now) {
        if (alarm.shelvedUntil().filter(at::equals).isPresent()) {
            return move(alarm, AlarmTrigger.UNSHELVE, timing).orElseThrow();
        }
        if (alarm.realarmAt().filter(at::equals).isPresent()) {
            return realarm(alarm.draft(), timing, now);
        }
        return alarm.pendingSince().isPresent()
                ? Occurrence.begin(alarm.draft(), timing)
                : Occurrence.end(alarm.draft(), timing);
    }

    /** The timer runs on while the alarm is withheld, so that it is there when the alarm comes back. */
    private static Step realarm(AlarmDraft draft, Timing timing, Instant now) {
        draft.realarmAt = timing.realarm().map(now::plus);
        var silent = new Step(draft.done(), Outcome.NOTED, false, false);
        if (timing.realarm().isEmpty()) {
            return silent;
        }
        draft.unanswered();
        return move(draft, AlarmTrigger.REALARM, timing).orElse(silent);
    }

    private static Optional<Outcome> withheldOutcome(AlarmState state) {
        return switch (state) {
            case SHELVED -> Optional.of(Outcome.SHELVED);
            case SUPPRESSED_BY_DESIGN -> Optional.of(Outcome.SUPPRESSED);
            case OUT_OF_SERVICE -> Optional.of(Outcome.OUT_OF_SERVICE);
            case NORMAL,
                    UNACKNOWLEDGED,
                    ACKNOWLEDGED,
                    RETURNED_UNACKNOWLEDGED,
                    LATCHED_UNACKNOWLEDGED,
                    LATCHED_ACKNOWLEDGED -> Optional.empty();
        };
    }
}
