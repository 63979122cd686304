package yardlight.escalation;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.ladder.Callout;

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
                .filter(draft::over)
                .distinct()
                .forEach(callout -> finish(callout, Optional.of(by)));
        settle(site, Optional.of(by));
    }

    /**
     * Ends the callouts of a site that have nothing left to wait for. Only what this decision has changed can be over by
     * it, so nothing else at the site is looked at.
     */
    void settle(String site, Optional<String> answeredBy) {
        settle(draft.touchedAt(site), answeredBy);
    }

    /** The same for all callouts of the site: another setup can end what no alarm has changed for. */
    void settleAll(String site) {
        settle(draft.calloutsAt(site), Optional.empty());
    }

    private void settle(List<Callout> callouts, Optional<String> answeredBy) {
        for (Callout callout : callouts) {
            if (draft.over(callout)) {
                finish(callout, answeredBy);
            }
        }
    }

    /** The site is gone: nobody is called for it any more, and nothing that waits about it is sent. */
    void abandon(String site) {
        Stream.concat(
                        draft.calloutsAt(site).stream(),
                        draft.alarmsAt(site).stream()
                                .flatMap(alarm -> alarm.callout().flatMap(draft::callout).stream())
                                .filter(callout -> callout.kind() == Callout.Kind.EXHAUSTED))
                .distinct()
                .forEach(callout -> end(callout, "the site is no longer set up"));
    }

    /** Ends a callout for another reason than an answer. */
    void end(Callout callout, String reason) {
        // Only if everybody it called has been told is there something to go on with when the alarm is back in a
        // moment.
        boolean told = draft.unsent(callout.id()).isEmpty();
        Optional<Instant> wasDue =
                told && callout instanceof Callout.Calling calling ? Optional.of(calling.nextAt()) : Optional.empty();
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
            notices.news().taken(callout, by);
        } else {
            AlarmState state = draft.alarm(callout.facts().alarms().get(0)).state();
            end(callout, state.withheld() ? state.word() : "returned to normal");
        }
    }
}
