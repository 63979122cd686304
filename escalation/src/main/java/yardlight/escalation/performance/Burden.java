package yardlight.escalation.performance;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** What being called costs a person. */
public final class Burden {

    /** Night, by the clock on the wall where the person is. Ours: quiet hours change over time, and are not alike. */
    public static final LocalTime NIGHT_FROM = LocalTime.of(22, 0);

    public static final LocalTime NIGHT_TO = LocalTime.of(6, 0);

    /** Whoever was woken is awake for a while. Ours. */
    public static final Duration AWAKE = Duration.ofMinutes(30);

    private Burden() {}

    /** Whether an instant lies in the night there: the start is part of it and the end is not. */
    public static boolean night(Instant at, ZoneId zone) {
        LocalTime time = at.atZone(zone).toLocalTime();
        return !time.isBefore(NIGHT_FROM) || time.isBefore(NIGHT_TO);
    }

    /**
     * How often somebody was woken: texts of the night, without those that came within half an hour of the one before,
     * while they were awake anyway.
     *
     * @param texts when each was handed over, oldest first
     */
    public static int wakings(List<Instant> texts, ZoneId zone) {
        int wakings = 0;
        Optional<Instant> before = Optional.empty();
        for (Instant at : texts) {
            if (night(at, zone)) {
                boolean awake =
                        before.filter(last -> !at.isAfter(last.plus(AWAKE))).isPresent();
                wakings += awake ? 0 : 1;
                before = Optional.of(at);
            }
        }
        return wakings;
    }
}
