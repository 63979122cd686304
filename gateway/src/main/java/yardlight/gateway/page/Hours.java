package yardlight.gateway.page;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How the hours of a week read at a site. */
public record Hours(ZoneId zone, Locale locale) {

    /** {@code 2:10 AM}. */
    public String clock(Instant instant) {
        return written(instant, english() ? "h:mm a" : "H:mm");
    }

    /** {@code Sat 2:10 AM}. */
    public String day(Instant instant) {
        return written(instant, english() ? "EEE h:mm a" : "EEE H:mm");
    }

    /** {@code Sat, Nov 28, 2:10 AM}. */
    public String date(Instant instant) {
        return written(instant, english() ? "EEE, MMM d, h:mm a" : "EEE d MMM, H:mm");
    }

    /** {@code Sat 28}. */
    public String date(LocalDate day) {
        return day.format(DateTimeFormatter.ofPattern("EEE d", locale));
    }

    /** The day on which it is there. */
    public LocalDate dayOf(Instant instant) {
        return LocalDate.ofInstant(instant, zone);
    }

    private String written(Instant instant, String pattern) {
        return instant.atZone(zone)
                .format(DateTimeFormatter.ofPattern(pattern, locale))
                .replace('\u202F', ' ');
    }

    private boolean english() {
        return locale.getLanguage().equals("en");
    }
}
