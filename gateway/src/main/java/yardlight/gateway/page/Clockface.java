package yardlight.gateway.page;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How a time reads to a person at a place: {@code 2:13 AM} today, {@code Nov 24, 2:13 AM} on another day. */
public record Clockface(ZoneId zone, Instant now, Locale locale) {

    public String read(Instant instant) {
        ZonedDateTime local = instant.atZone(zone);
        boolean today = local.toLocalDate().equals(LocalDate.ofInstant(now, zone));
        return local.format(DateTimeFormatter.ofPattern(today ? time() : date() + ", " + time(), locale))
                .replace('\u202F', ' ');
    }

    /** A time of day on any day: {@code 9:00 PM}. */
    public String read(LocalTime time) {
        return time.format(DateTimeFormatter.ofPattern(time(), locale)).replace('\u202F', ' ');
    }

    /** The time of day of an instant, whatever day it is. */
    public String time(Instant instant) {
        return read(instant.atZone(zone).toLocalTime());
    }

    /** A day: {@code Nov 23}, with the year unless it is this one. */
    public String read(LocalDate day) {
        return day.format(DateTimeFormatter.ofPattern(date(day), locale));
    }

    /** A day of a week that is shown as a whole: {@code Mon, Nov 23}. */
    public String readInWeek(LocalDate day) {
        return day.format(DateTimeFormatter.ofPattern("EEE, " + date(), locale));
    }

    /** With the day of the week and the date, whatever day it is: {@code Mon, Nov 23, 7:00 AM}. */
    public String readWithDay(Instant instant) {
        ZonedDateTime local = instant.atZone(zone);
        return local.format(DateTimeFormatter.ofPattern("EEE, " + date(local.toLocalDate()) + ", " + time(), locale))
                .replace('\u202F', ' ');
    }

    /** With the day of the week alone: {@code Sat 9:00 PM}. */
    public String readWithinWeek(Instant instant) {
        return instant.atZone(zone)
                .format(DateTimeFormatter.ofPattern("EEE " + time(), locale))
                .replace('\u202F', ' ');
    }

    private String date(LocalDate day) {
        boolean thisYear = day.getYear() == LocalDate.ofInstant(now, zone).getYear();
        return thisYear ? date() : date() + (english() ? ", uuuu" : " uuuu");
    }

    /** To the second, and without the day: {@code 2:13:07 AM}. */
    public String exact(Instant instant) {
        return instant.atZone(zone)
                .format(DateTimeFormatter.ofPattern(english() ? "h:mm:ss a" : "H:mm:ss", locale))
                .replace('\u202F', ' ');
    }

    private String time() {
        return english() ? "h:mm a" : "H:mm";
    }

    private String date() {
        return english() ? "MMM d" : "d MMM";
    }

    private boolean english() {
        return locale.getLanguage().equals("en");
    }

    /** How long ago an instant is, in the language of the clock: {@code 40 s}, {@code 2 days}, {@code 2 días}. */
    public String ago(Instant instant) {
        String age = ago(instant, now);
        return english() ? age : age.replace("days", "días");
    }

    /** How long ago an instant is: {@code 40 s}, {@code 12 min}, {@code 3 h}, {@code 2 days}. */
    public static String ago(Instant instant, Instant now) {
        Duration age = Duration.between(instant, now);
        if (age.compareTo(Duration.ofMinutes(2)) < 0) {
            return Math.max(0, age.toSeconds()) + " s";
        }
        if (age.compareTo(Duration.ofHours(2)) < 0) {
            return age.toMinutes() + " min";
        }
        return age.compareTo(Duration.ofDays(2)) < 0 ? age.toHours() + " h" : age.toDays() + " days";
    }
}
