package yardlight.db.alarm;

import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmState;

/**
 * Which alarms are asked for.
 *
 * @param state as it is now; an occurrence that another one followed counts as normal
 * @param from occurred at or after this instant
 * @param to occurred before this instant
 * @param limit at most so many, the newest ones; 1 to 1000
 */
public record AlarmFilter(
        Optional<String> site, Optional<AlarmState> state, Optional<Instant> from, Optional<Instant> to, int limit) {

    public static final int MOST = 1000;

    public AlarmFilter {
        if (limit < 1 || limit > MOST) {
            throw new IllegalArgumentException("limit must be 1 to " + MOST + ": " + limit);
        }
    }
}
