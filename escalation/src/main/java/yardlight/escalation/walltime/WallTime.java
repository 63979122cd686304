package yardlight.escalation.walltime;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;

/**
 * Which instant is meant by a time on the clock on the wall. A time that the night of a change leaves out is the first
 * moment after the gap; one that comes twice is the first of the two.
 */
public final class WallTime {

    private WallTime() {}

    /** Never {@code ZonedDateTime.of} alone: it moves a skipped 02:30 past a 03:15 that is not skipped. */
    public static Instant instant(LocalDateTime local, ZoneId zone) {
        ZoneOffsetTransition transition = zone.getRules().getTransition(local);
        boolean skipped = transition != null && transition.isGap();
        return skipped ? transition.getInstant() : local.atZone(zone).toInstant();
    }
}
