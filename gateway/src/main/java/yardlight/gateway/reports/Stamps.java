package yardlight.gateway.reports;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * Times to the second, as a record needs them: at the site, with the letters of its zone because an hour of autumn comes
 * twice, and in UTC.
 */
record Stamps(ZoneId zone, Locale locale) {

    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss'Z'").withZone(ZoneOffset.UTC);

    /** {@code Nov 25, 2026, 2:13:07 AM CST}. */
    String local(Instant at) {
        return local(at, english() ? "MMM d, uuuu, h:mm:ss a zzz" : "d MMM uuuu, H:mm:ss zzz");
    }

    private boolean english() {
        return locale.getLanguage().equals("en");
    }

    private String local(Instant at, String pattern) {
        return at.atZone(zone)
                .format(DateTimeFormatter.ofPattern(pattern, locale))
                .replace('\u202F', ' ');
    }

    /** {@code 2026-11-25 08:13:07Z}. */
    static String utc(Instant at) {
        return UTC.format(at);
    }

    /** Both, one under the other; the year stands in the second. */
    String both(Instant at) {
        return local(at, english() ? "MMM d, h:mm:ss a zzz" : "d MMM, H:mm:ss zzz") + "\n" + utc(at);
    }

    /** {@code 1 d 2 h 3 min 4 s}, begun seconds not counted; with a minus when it goes back. */
    static String length(Duration span) {
        Duration length = span.abs().truncatedTo(ChronoUnit.SECONDS);
        var words = new StringBuilder(span.isNegative() && !length.isZero() ? "-" : "");
        part(words, length.toDays(), "d");
        part(words, length.toHoursPart(), "h");
        part(words, length.toMinutesPart(), "min");
        return words.append(length.toSecondsPart()).append(" s").toString();
    }

    private static void part(StringBuilder words, long number, String unit) {
        boolean begun = words.length() > 1;
        if (number > 0 || begun) {
            words.append(number).append(' ').append(unit).append(' ');
        }
    }
}
