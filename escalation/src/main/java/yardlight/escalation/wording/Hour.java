package yardlight.escalation.wording;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Locale;

/** Times as they stand in a text. */
final class Hour {

    private Hour() {}

    /** "2:13 AM". Spelled out here, because the JDK's own forms differ from release to release. */
    static String of(Instant at, ZoneId zone) {
        LocalTime time = LocalTime.ofInstant(at, zone);
        return String.format(
                Locale.ROOT,
                "%s:%s%s %s",
                (time.getHour() + 11) % 12 + 1,
                time.getMinute() / 10,
                time.getMinute() % 10,
                time.getHour() < 12 ? "AM" : "PM");
    }

    /** "Sat 2:13 AM". */
    static String ofDay(Instant at, ZoneId zone, Phrases phrases) {
        return phrases.day(at.atZone(zone).getDayOfWeek()) + " " + of(at, zone);
    }
}
