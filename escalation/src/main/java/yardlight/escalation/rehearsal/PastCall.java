package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;

/**
 * An alarm that called people, and what came of it.
 *
 * @param alarm id of the occurrence
 * @param at from when on it called in truth
 * @param calls whether it called anybody; in truth they all did, in a replay it may call nobody
 * @param toldAt when the first text about its site went out since then; empty when none did before it was answered
 * @param by who answered or shelved it; empty when nobody did
 */
public record PastCall(
        AlarmKey key,
        String alarm,
        Priority priority,
        Instant at,
        boolean calls,
        Optional<Instant> toldAt,
        Optional<String> by,
        Optional<Instant> answeredAt) {

    static PastCall begun(Stretch one, boolean calls) {
        return new PastCall(
                one.key(),
                one.alarm(),
                one.priority(),
                one.since(),
                calls,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    PastCall calling() {
        return calls ? this : new PastCall(key, alarm, priority, at, true, toldAt, by, answeredAt);
    }

    PastCall told(Instant when) {
        return toldAt.isPresent() || answeredAt.isPresent()
                ? this
                : new PastCall(key, alarm, priority, at, calls, Optional.of(when), by, answeredAt);
    }

    /** What is answered in the very moment in which it comes, along with another alarm, called as well. */
    PastCall answered(String who, Instant when) {
        return answeredAt.isPresent()
                ? this
                : new PastCall(key, alarm, priority, at, true, toldAt, Optional.of(who), Optional.of(when));
    }

    /** From the alarm to the first answer; empty when there is none. */
    public Optional<Duration> waited() {
        return answeredAt.map(when -> Duration.between(at, when));
    }
}
