package yardlight.escalation.alarm;

import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmRules.Step;

/** How an activation begins and ends, once its delay has run out. */
final class Occurrence {

    private Occurrence() {}

    /** Whether the next activation is a new occurrence, and not one more of the occurrence that is still open. */
    static boolean anew(AlarmDraft draft) {
        return draft.state == AlarmState.NORMAL || draft.state.withheld() && !draft.latched;
    }

    /** The condition has held since {@code pendingSince} for the whole on-delay. */
    static Step begin(AlarmDraft draft, Timing timing) {
        Instant since = draft.pendingSince.orElseThrow();
        remember(draft, since);
        boolean answered = answeredChatter(draft, timing, since);
        count(draft, since, answered);
        draft.pendingSince = Optional.empty();
        draft.returnedAt = Optional.empty();
        draft.active = true;
        draft.latched = false;
        if (!answered) {
            draft.unanswered();
        }
        // From the moment it was known here: a backlog or a slow clock must not call twice at once.
        Instant known = draft.receivedAt.filter(since::isBefore).orElse(since);
        draft.realarmAt = timing.realarm().map(known::plus);
        Step step = AlarmRules.move(draft, AlarmTrigger.OCCUR, timing).orElseThrow();
        return new Step(step.alarm(), Outcome.OCCURRED, step.calls(), false);
    }

    /** The condition has been over since {@code clearingSince} for the whole off-delay. */
    static Step end(AlarmDraft draft, Timing timing) {
        draft.returnedAt = draft.clearingSince;
        draft.clearingSince = Optional.empty();
        draft.realarmAt = Optional.empty();
        draft.active = false;
        draft.latched = timing.latching();
        Step step = AlarmRules.move(draft, AlarmTrigger.RETURN, timing).orElseThrow();
        return new Step(step.alarm(), Outcome.RETURNED, false, false);
    }

    static void remember(AlarmDraft draft, Instant activation) {
        draft.activations.add(activation);
        if (draft.activations.size() > Nuisance.KEPT) {
            draft.activations.remove(0);
        }
    }

    private static void count(AlarmDraft draft, Instant since, boolean answered) {
        if (!anew(draft)) {
            draft.repeats++;
            return;
        }
        draft.occurrence++;
        draft.repeats = 0;
        draft.occurredAt = Optional.of(since);
        draft.callout = answered ? draft.callout : Optional.empty();
    }

    /** Whether this activation makes the alarm chatter, and somebody answered it as part of the same flutter. */
    private static boolean answeredChatter(AlarmDraft draft, Timing timing, Instant since) {
        return anew(draft)
                && draft.seen
                && Nuisance.chattering(draft.activations, timing.nuisance())
                && draft.acknowledgedAt
                        .filter(at -> at.plus(timing.nuisance().settle()).isAfter(since))
                        .isPresent();
    }
}
