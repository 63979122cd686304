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
     * Takes a report.
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
        Priority said = report.priority().orElse(priority);
        Step step =
                report.active() ? activate(draft, report, timing, said, now) : clear(draft, report.at(), timing, now);
        Outcome outcome = withheldOutcome(step.alarm().state()).orElse(step.outcome());
        return new Step(step.alarm(), outcome, due.calls() || step.calls(), step.raised());
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
        return new Step(alarm, Outcome.NOTED, calls, false);
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
        draft.realarmAt = Optional.empty();
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

    private static boolean older(Report report, Alarm before) {
        return report.declared()
                && before.declaredAt().filter(report.at()::isBefore).isPresent();
    }

    private static Step activate(AlarmDraft draft, Report report, Timing timing, Priority said, Instant now) {
        if (draft.active) {
            return repeat(draft, report, timing, said);
        }
        if (draft.pendingSince.isEmpty()) {
            draft.pendingSince = Optional.of(report.at());
            draft.receivedAt = Optional.of(now);
            draft.priority = said;
        }
        draft.priority = draft.priority.orHigher(said);
        draft.measured = report.measured();
        if (draft.pendingSince.orElseThrow().plus(timing.onDelay()).isAfter(now)) {
            return new Step(draft.done(), Outcome.DELAYED, false, false);
        }
        return occur(draft, timing);
    }

    private static Step repeat(AlarmDraft draft, Report report, Timing timing, Priority said) {
        if (draft.clearingSince.isPresent()) {
            draft.clearingSince = Optional.empty();
            remember(draft, report.at());
        }
        draft.repeats++;
        draft.measured = report.measured();
        boolean raised = said.compareTo(draft.priority) > 0;
        draft.priority = draft.priority.orHigher(said);
        if (raised && draft.state == AlarmState.ACKNOWLEDGED) {
            draft.seen = false;
            return move(draft, AlarmTrigger.REALARM, timing)
                    .map(step -> new Step(step.alarm(), Outcome.REPEATED, true, true))
                    .orElseThrow();
        }
        return new Step(draft.done(), Outcome.REPEATED, false, raised);
    }

    private static Step clear(AlarmDraft draft, Instant at, Timing timing, Instant now) {
        draft.pendingSince = Optional.empty();
        if (!draft.active) {
            return new Step(draft.done(), Outcome.NOTED, false, false);
        }
        if (draft.clearingSince.isEmpty()) {
            draft.clearingSince = Optional.of(at);
        }
        Step after = due(draft.done(), timing, now);
        return new Step(after.alarm(), after.alarm().active() ? Outcome.NOTED : Outcome.RETURNED, after.calls(), false);
    }

    private static Step fire(Alarm alarm, Timing timing, Instant at, Instant now) {
        AlarmDraft draft = alarm.draft();
        if (alarm.shelvedUntil().filter(at::equals).isPresent()) {
            return move(alarm, AlarmTrigger.UNSHELVE, timing).orElseThrow();
        }
        if (alarm.realarmAt().filter(at::equals).isPresent()) {
            draft.realarmAt = timing.realarm().map(now::plus);
            draft.seen = false;
            Alarm quiet = alarm.draft().realarmAt(Optional.empty()).done();
            return move(draft, AlarmTrigger.REALARM, timing).orElse(new Step(quiet, Outcome.NOTED, false, false));
        }
        return alarm.pendingSince().isPresent() ? occur(draft, timing) : returned(draft, at, timing);
    }

    private static Step occur(AlarmDraft draft, Timing timing) {
        Instant since = draft.pendingSince.orElseThrow();
        draft.pendingSince = Optional.empty();
        draft.active = true;
        boolean answered = answeredChatter(draft, timing, since);
        boolean anew = draft.state == AlarmState.NORMAL || draft.state.withheld() && !draft.latched;
        draft.seen = answered;
        draft.latched = false;
        if (anew) {
            draft.occurrence++;
            draft.repeats = 0;
            draft.occurredAt = Optional.of(since);
            draft.acknowledgedAt = answered ? draft.acknowledgedAt : Optional.empty();
            draft.acknowledgedBy = answered ? draft.acknowledgedBy : Optional.empty();
            draft.callout = answered ? draft.callout : Optional.empty();
        } else {
            draft.repeats++;
        }
        draft.returnedAt = Optional.empty();
        draft.realarmAt = timing.realarm().map(since::plus);
        remember(draft, since);
        Step step = move(draft, AlarmTrigger.OCCUR, timing).orElseThrow();
        return new Step(step.alarm(), Outcome.OCCURRED, step.calls(), false);
    }

    /** Whether this activation makes the alarm chatter, and somebody answered it as part of the same flutter. */
    private static boolean answeredChatter(AlarmDraft draft, Timing timing, Instant since) {
        remember(draft, since);
        boolean chatters = Nuisance.chattering(draft.activations, timing.nuisance());
        draft.activations.remove(draft.activations.size() - 1);
        return chatters
                && draft.seen
                && draft.acknowledgedAt
                        .filter(at -> at.plus(timing.nuisance().settle()).isAfter(since))
                        .isPresent();
    }

    private static Step returned(AlarmDraft draft, Instant at, Timing timing) {
        Instant since = draft.clearingSince.orElse(at);
        draft.clearingSince = Optional.empty();
        draft.active = false;
        draft.returnedAt = Optional.of(since);
        draft.realarmAt = Optional.empty();
        draft.latched = timing.latching();
        Step step = move(draft, AlarmTrigger.RETURN, timing).orElseThrow();
        return new Step(step.alarm(), Outcome.RETURNED, false, false);
    }

    private static Optional<Step> move(AlarmDraft draft, AlarmTrigger trigger, Timing timing) {
        var facts = new AlarmTransitions.Facts(
                draft.active,
                draft.seen,
                timing.latching(),
                draft.latched,
                draft.seen && trigger == AlarmTrigger.OCCUR);
        return AlarmTransitions.next(draft.state, trigger, facts).map(next -> {
            boolean calls = next == AlarmState.UNACKNOWLEDGED
                    || next == AlarmState.LATCHED_UNACKNOWLEDGED && trigger != AlarmTrigger.RETURN;
            return new Step(draft.state(next).done(), Outcome.NOTED, calls, false);
        });
    }

    private static void remember(AlarmDraft draft, Instant at) {
        draft.activations.add(at);
        if (draft.activations.size() > Nuisance.KEPT) {
            draft.activations.remove(0);
        }
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
