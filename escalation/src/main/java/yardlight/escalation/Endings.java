package yardlight.escalation;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;

/** Ends callouts: somebody answered, or there is nothing left to wait for. */
final class Endings {

    private final Draft draft;
    private final Notices notices;

    Endings(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
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

    /** Ends a callout for another reason than an answer. */
    void end(Callout callout, String reason) {
        // A held callout told nobody, so there is nothing to go on with if the alarm is back in a moment.
        Optional<Instant> wasDue =
                callout instanceof Callout.Calling calling ? Optional.of(calling.nextAt()) : Optional.empty();
        draft.put(new Callout.Ended(callout.facts(), callout.place(), wasDue, reason, draft.now()));
        draft.log(callout.facts(), "ended: " + reason);
        notices.over(callout, false);
    }

    private void finish(Callout callout, Optional<String> answeredBy) {
        if (answeredBy.isPresent()) {
            String by = answeredBy.get();
            draft.put(new Callout.Answered(callout.facts(), callout.place(), by, draft.now()));
            draft.log(callout.facts(), "answered by " + by);
            notices.over(callout, true);
        } else {
            AlarmState state = draft.alarm(callout.facts().alarms().get(0)).state();
            end(callout, state.withheld() ? state.word() : "returned to normal");
        }
    }

    private boolean over(Callout callout) {
        return callout.facts().alarms().stream().map(draft::alarm).noneMatch(alarm -> waits(alarm, callout));
    }

    private boolean waits(Alarm alarm, Callout callout) {
        boolean mine = alarm.callout().filter(callout.id()::equals).isPresent();
        boolean untilNormal = draft.ladder(alarm.key().site()).endsWhen() == Ladder.EndsWhen.NORMAL;
        return mine && (untilNormal ? alarm.state().calls() : alarm.state().awaitsAnswer());
    }
}
