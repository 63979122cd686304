package yardlight.gateway.strip;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Marks at times that are round on the clock of a place, also on the days on which that clock is put forward or back. */
public final class RoundTimes {

    private static final int DAY = 1440;

    private static final int[] MINUTES = {
        1, 2, 5, 10, 15, 30, 60, 120, 180, 360, 720, DAY, 2 * DAY, 7 * DAY, 14 * DAY, 28 * DAY, 56 * DAY, 112 * DAY
    };

    private RoundTimes() {}

    /**
     * @param from inclusive
     * @param to inclusive
     * @param most no more than so many, at least 2
     */
    public static List<Instant> between(Instant from, Instant to, ZoneId zone, int most) {
        return every(stepOf(Duration.between(from, to), most), from, to, zone);
    }

    private static int stepOf(Duration span, int most) {
        return IntStream.of(MINUTES)
                .filter(minutes -> span.toSeconds() <= minutes * 60L * (most - 1))
                .findFirst()
                .orElse(MINUTES[MINUTES.length - 1]);
    }

    /** Every so many minutes of the local clock, counted from a midnight. */
    static List<Instant> every(int minutes, Instant from, Instant to, ZoneId zone) {
        LocalDate first = LocalDate.ofInstant(from, zone);
        LocalDateTime local = minutes <= DAY
                ? first.atStartOfDay()
                : first.minusDays(Math.floorMod(first.toEpochDay(), minutes / DAY))
                        .atStartOfDay();
        var marks = new ArrayList<Instant>();
        Instant last = Instant.MIN;
        for (Instant at = at(local, zone); !at.isAfter(to); at = at(local, zone)) {
            if (!at.isBefore(from) && at.isAfter(last)) {
                marks.add(at);
                last = at;
            }
            local = local.plusMinutes(minutes);
        }
        return marks;
    }

    private static Instant at(LocalDateTime local, ZoneId zone) {
        return local.atZone(zone).toInstant();
    }
}
