package yardlight.escalation;

import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
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

    /**
     * Some of these alarms wait in another callout now, or were answered with it. One that climbed its whole ladder for them in vain
     * has nothing left to wait for, unless it has an alarm of its own still.
     *
     * @param before as they were
     */
    void left(Collection<Alarm> before) {
        var joined = new LinkedHashMap<String, String>();
        for (Alarm was : before) {
            Optional<Callout> next = draft.alarm(was.key()).callout().flatMap(draft::callout);
            was.callout()
                    .flatMap(draft::callout)
                    .filter(callout -> callout.kind() == Callout.Kind.EXHAUSTED)
                    .filter(callout -> next.filter(other -> !other.id().equals(callout.id()))
                            .isPresent())
                    .ifPresent(callout -> joined.put(callout.id(), left(callout, next.orElseThrow(), was)));
        }
        joined.forEach(
                (id, reason) -> draft.callout(id).filter(draft::over).ifPresent(callout -> end(callout, reason)));
    }

    /** The line of its end is in the record of its first alarm only, and comes only once none of them waits in it. */
    private String left(Callout callout, Callout next, Alarm alarm) {
        String reason = "joined the callout with code " + next.facts().code();
        boolean first = callout.facts().alarms().get(0).equals(alarm.key());
        if (!first || !draft.over(callout)) {
            draft.log(
                    Entry.What.CALLOUT,
                    Map.of("site", alarm.key().site(), "callout", callout.id(), "alarm", alarm.id()),
                    "callout " + callout.facts().code() + " ended for "
                            + alarm.key().local() + ": " + reason);
        }
        return reason;
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
