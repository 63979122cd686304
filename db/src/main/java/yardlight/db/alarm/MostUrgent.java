package yardlight.db.alarm;

import java.time.Instant;
import java.util.Comparator;

/** The order of a board: what waits for an answer first, then by priority, then the oldest. */
final class MostUrgent {

    static final Comparator<RecordedAlarm> FIRST = Comparator.comparing(
                    (RecordedAlarm one) -> !one.alarm().state().awaitsAnswer())
            .thenComparing(one -> one.alarm().priority(), Comparator.reverseOrder())
            .thenComparing(one -> one.alarm().occurredAt().orElse(Instant.MIN))
            .thenComparing(one -> one.alarm().key());

    private MostUrgent() {}
}
