package yardlight.escalation.alarm;

import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmRules.Step;

/**
 * A report on its way into an alarm.
 *
 * @param said the priority that the alarm has by this report
 * @param now when it arrived
 */
record Arrival(Report report, Priority said, Timing timing, Instant now) {

    Step at(Alarm before) {
        if (olderThan(before)) {
            return new Step(before, Outcome.NOTED, false, false);
        }
        Step due = AlarmRules.due(before, timing, report.at());
        AlarmDraft draft = due.alarm().draft();
        if (!report.box().equals(draft.box)) {
            draft.declaredAt = Optional.empty();
        }
        draft.box = report.box();
        if (report.declared()) {
            draft.declaredAt = Optional.of(report.at());
        }
        Step step = report.active() ? active(draft) : over(draft);
        AlarmState state = step.alarm().state();
        boolean calls = (due.calls() || step.calls()) && state.calls();
        return new Step(step.alarm(), withheld(state).orElse(step.outcome()), calls, step.raised());
    }

    /** Only times of one clock can be compared: another box may have another one. */
    private boolean olderThan(Alarm before) {
        return report.declared()
                && report.box().equals(before.box())
                && before.declaredAt().filter(report.at()::isBefore).isPresent();
    }

    private Step active(AlarmDraft draft) {
        if (draft.active) {
            return repeat(draft);
        }
        if (draft.pendingSince.isEmpty()) {
            draft.pendingSince = Optional.of(report.at());
            if (Occurrence.anew(draft)) {
                draft.receivedAt = Optional.of(now);
                // Who answered something less urgent has not answered this.
                draft.seen = draft.seen && !(said.compareTo(draft.priority) > 0);
                draft.priority = said;
                draft.measured = Measured.NOTHING;
            }
        }
        draft.priority = draft.priority.orHigher(said);
        draft.measured = report.measured().orElse(draft.measured);
        Instant occursAt = draft.pendingSince.orElseThrow().plus(timing.onDelay());
        return occursAt.isAfter(report.at())
                ? new Step(draft.done(), Outcome.DELAYED, false, false)
                : Occurrence.begin(draft, timing);
    }

    private Step repeat(AlarmDraft draft) {
        if (draft.clearingSince.isPresent()) {
            draft.clearingSince = Optional.empty();
            Occurrence.remember(draft, report.at());
        }
        draft.repeats++;
        draft.measured = report.measured().orElse(draft.measured);
        boolean raised = said.compareTo(draft.priority) > 0;
        draft.priority = draft.priority.orHigher(said);
        return raised ? raise(draft) : new Step(draft.done(), Outcome.REPEATED, false, false);
    }

    /** An answer was given to something less urgent; a withheld alarm keeps that for the time when it comes back. */
    private Step raise(AlarmDraft draft) {
        draft.unanswered();
        if (draft.state == AlarmState.ACKNOWLEDGED) {
            Step again = AlarmRules.move(draft, AlarmTrigger.REALARM, timing).orElseThrow();
            return new Step(again.alarm(), Outcome.REPEATED, true, true);
        }
        // It calls anew as well: its ladder may have been exhausted while it was less urgent.
        return new Step(draft.done(), Outcome.REPEATED, draft.state.calls(), !draft.state.withheld());
    }

    private Step over(AlarmDraft draft) {
        draft.pendingSince = Optional.empty();
        if (!draft.active) {
            return new Step(draft.done(), Outcome.NOTED, false, false);
        }
        if (draft.clearingSince.isEmpty()) {
            draft.clearingSince = Optional.of(report.at());
        }
        Step after = AlarmRules.due(draft.done(), timing, report.at());
        return new Step(after.alarm(), after.alarm().active() ? Outcome.NOTED : Outcome.RETURNED, after.calls(), false);
    }

    private static Optional<Outcome> withheld(AlarmState state) {
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
