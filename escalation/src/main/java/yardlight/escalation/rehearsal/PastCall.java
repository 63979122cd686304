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
 * @param at from when on it called
 * @param toldAt when the first text about its site went out since then; empty when none did before it was answered
 * @param by who answered or shelved it; empty when nobody did
 */
public record PastCall(
        AlarmKey key,
        String alarm,
        Priority priority,
        Instant at,
        Optional<Instant> toldAt,
        Optional<String> by,
        Optional<Instant> answeredAt) {

    static PastCall begun(Stretch one) {
        return new PastCall(
                one.key(),
                one.alarm(),
                one.priority(),
                one.since(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    PastCall told(Instant when) {
        return toldAt.isPresent() || answeredAt.isPresent()
                ? this
                : new PastCall(key, alarm, priority, at, Optional.of(when), by, answeredAt);
    }

    PastCall answered(String who, Instant when) {
        return answeredAt.isPresent()
                ? this
                : new PastCall(key, alarm, priority, at, toldAt, Optional.of(who), Optional.of(when));
    }

    /** From the alarm to the first answer; empty when there is none. */
    public Optional<Duration> waited() {
        return answeredAt.map(when -> Duration.between(at, when));
    }
}
