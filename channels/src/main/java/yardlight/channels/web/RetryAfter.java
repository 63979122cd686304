package yardlight.channels.web;

import java.net.http.HttpHeaders;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How long a server asks to be left alone, RFC 9110 10.2.3: seconds, or a date.
 *
 * <p>A date is held against the server's own {@code Date} (RFC 9110 6.6.1) and not against a clock of ours, which may
 * differ; without one it says nothing.
 */
public final class RetryAfter {

    /** What asks for more is asked again all the same: an alarm cannot wait longer. */
    public static final Duration LONGEST = Duration.ofHours(1);

    /** RFC 9110 5.6.7: two digits of a year that seem to be more than 50 years ahead are of the century before. */
    private static final int OLDEST_YEAR = 1_970;

    /** The three forms of RFC 9110 5.6.7, the usual one first. */
    private static final List<DateTimeFormatter> DATES = List.of(
            form("EEE, dd MMM uuuu HH:mm:ss 'GMT'"),
            new DateTimeFormatterBuilder()
                    .append(form("EEEE, dd-MMM-"))
                    .appendValueReduced(ChronoField.YEAR, 2, 2, OLDEST_YEAR)
                    .append(form(" HH:mm:ss 'GMT'"))
                    .toFormatter(Locale.ENGLISH),
            form("EEE MMM ppd HH:mm:ss uuuu"));

    private RetryAfter() {}

    /** Empty when nothing is asked, or nothing that can be understood. Never negative, at most {@link #LONGEST}. */
    public static Optional<Duration> in(HttpHeaders headers) {
        return headers.firstValue("Retry-After").map(String::strip).flatMap(asked -> length(asked, headers));
    }

    private static Optional<Duration> length(String asked, HttpHeaders headers) {
        if (asked.matches("[0-9]+")) {
            return Optional.of(asked.length() > 9 ? LONGEST : bounded(Duration.ofSeconds(Long.parseLong(asked))));
        }
        Optional<LocalDateTime> now = headers.firstValue("Date").flatMap(RetryAfter::date);
        return now.flatMap(from -> date(asked).map(until -> bounded(Duration.between(from, until))));
    }

    private static Duration bounded(Duration length) {
        if (length.isNegative()) {
            return Duration.ZERO;
        }
        return length.compareTo(LONGEST) > 0 ? LONGEST : length;
    }

    /** In UTC. */
    static Optional<LocalDateTime> date(String text) {
        for (DateTimeFormatter form : DATES) {
            try {
                return Optional.of(LocalDateTime.parse(text.strip(), form));
            } catch (DateTimeParseException e) {
                // Perhaps the next form.
            }
        }
        return Optional.empty();
    }

    private static DateTimeFormatter form(String pattern) {
        return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH).withZone(ZoneOffset.UTC);
    }
}
