package yardlight.db.retention;

import java.time.Duration;

/**
 * How long things are kept.
 *
 * @param events what boxes posted, as it came
 * @param record alarms, callouts, notices and the log; 40 CFR 112.7(e) asks three years for inspection records
 */
public record Ages(Duration events, Duration record) {

    public static final Ages USUAL = new Ages(Duration.ofDays(90), Duration.ofDays(3 * 366));

    public Ages {
        if (events.compareTo(Duration.ofDays(30)) < 0) {
            throw new IllegalArgumentException(
                    "events must be kept for at least 30 days, in which a repeated id is a duplicate: " + events);
        }
        if (record.compareTo(events) < 0) {
            throw new IllegalArgumentException("record must be kept at least as long as events: " + record);
        }
    }
}
