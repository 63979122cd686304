package yardlight.escalation.performance;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;

/**
 * One occurrence of an alarm, as it is remembered.
 *
 * @param announced whether somebody was to be called for it: what was shelved, suppressed, out of service or over before
 *     it was known here is counted apart
 * @param at when it occurred
 * @param receivedAt when it was known here
 * @param over when the condition had gone; empty while it holds
 * @param answeredAt when somebody acknowledged it, if somebody did
 * @param activations the newest activations of its alarm up to its end, oldest first, those of earlier occurrences included
 */
public record PastAlarm(
        AlarmKey key,
        Priority priority,
        boolean announced,
        Instant at,
        Instant receivedAt,
        Optional<Instant> over,
        Optional<Instant> answeredAt,
        List<Instant> activations) {
    public PastAlarm {
        activations = List.copyOf(activations);
    }
}
