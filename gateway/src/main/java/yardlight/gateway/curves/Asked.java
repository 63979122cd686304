package yardlight.gateway.curves;

import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import yardlight.gateway.document.Rfc3339;
import yardlight.gateway.strip.Stretch;

/**
 * What somebody wants to see. Whatever cannot be read is as if it had not been said: an address that was cut off still
 * shows something.
 *
 * @param points ids; empty for the usual ones
 * @param span as ISO 8601 has it
 * @param until empty for now
 * @param beside whether the day before and the week before lie under it
 */
record Asked(List<String> points, Duration span, Optional<Instant> until, boolean beside) {

    /** More curves than these are no help on one page. */
    static final int MOST_POINTS = 12;

    static final Duration SHORTEST = Duration.ofMinutes(2);
    static final Duration LONGEST = Duration.ofDays(400);
    private static final Duration USUAL = Duration.ofDays(1);

    Asked {
        points = points.stream()
                .filter(point -> point != null && !point.isBlank()) // null is a name without a value, more than once
                .distinct()
                .limit(MOST_POINTS)
                .toList();
    }

    static Asked of(List<String> points, String span, String until, boolean beside) {
        return new Asked(points, span(span), Rfc3339.instant(until).filter(at -> at.isAfter(Instant.EPOCH)), beside);
    }

    private static Duration span(String text) {
        try {
            Duration span = text.isEmpty() ? USUAL : Duration.parse(text);
            if (span.compareTo(SHORTEST) < 0) {
                return SHORTEST;
            }
            return span.compareTo(LONGEST) > 0 ? LONGEST : span;
        } catch (DateTimeParseException e) {
            return USUAL;
        }
    }

    Stretch stretch(Instant now) {
        Instant to = until.filter(at -> at.isBefore(now)).orElse(now);
        return new Stretch(to.minus(span), to);
    }
}
