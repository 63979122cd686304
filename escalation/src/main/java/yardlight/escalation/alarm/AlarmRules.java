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

    private AlarmRules() {}

    /**
     * Takes a report. Delays are judged at the report's own time, so that in a backlog the next report can still undo
     * what this one began; what is due by the time of arrival is left to {@link #due}, to be called after the last one.
     *
     * @param priority what the alarm gets if the report does not say
     * @param now time of arrival, at or after {@code report.at()}
     */
    public static Step report(Alarm before, Report report, Timing timing, Priority priority, Instant now) {
        return new Arrival(report, report.priority().orElse(priority), timing, now).at(before);
    }

    /**
     * Whether a report says anything that is not known: what starts, what ends, what has become more urgent. The rest are
     * repeats, which alone may be refused when there are too many.
     */
    public static boolean news(Alarm before, Report report) {
        boolean known = before.active() || before.pendingSince().isPresent();
        boolean raised = report.priority()
                .filter(priority -> priority.compareTo(before.priority()) > 0)
                .isPresent();
        return report.active() != known || report.active() && raised;
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

    /**
     * Who answered another alarm has answered this one too, and is called again when they are for the other one. Empty when the
     * state does not allow it, or nobody answered the other one.
     */
    public static Optional<Step> answeredWith(Alarm before, Alarm other, Timing timing, Instant now) {
        Optional<Instant> again = before.active() ? other.realarmAt() : Optional.empty();
        return other.acknowledgedBy()
                .flatMap(by -> acknowledge(before, by, timing, now))
                .map(step -> new Step(
                        step.alarm().draft().realarmAt(again).done(), step.outcome(), step.calls(), step.raised()));
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

    /** There is more to it than what was answered. Empty when nobody has answered, or people are kept from it. */
    public static Optional<Step> again(Alarm before, Timing timing) {
        return move(before.draft().unanswered(), AlarmTrigger.REALARM, timing);
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
}
