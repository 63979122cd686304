package yardlight.gateway.fields;

import java.time.Duration;
import java.time.format.DateTimeParseException;

/**
 * A length of time as somebody types it.
 *
 * @param unit {@code S}, {@code M}, {@code H} or {@code D}, as in ISO 8601
 */
public record Span(String count, String unit) {

    public static final String SECONDS = "S";
    public static final String MINUTES = "M";
    public static final String HOURS = "H";
    public static final String DAYS = "D";

    private static final String WHOLE = "\\d{1,7}";
    private static final String BROKEN = "\\d{1,7}\\.\\d{1,9}";
    private static final int MINUTE = 60;

    /** As it stands in the setup, in the largest unit that leaves nothing over; below two days in hours. */
    static Span of(String duration) {
        try {
            return duration.isEmpty() ? new Span("", MINUTES) : of(Duration.parse(duration));
        } catch (DateTimeParseException e) {
            return new Span(duration, MINUTES);
        }
    }

    private static Span of(Duration length) {
        if (length.isZero()) {
            return new Span("0", MINUTES);
        }
        long seconds = length.toSeconds();
        if (length.getNano() != 0 || seconds % MINUTE != 0) {
            // ISO 8601 has the same digits: PT0.5S.
            boolean exact = length.getNano() == 0;
            String count = exact
                    ? Long.toString(seconds)
                    : java.math.BigDecimal.valueOf(seconds)
                            .add(java.math.BigDecimal.valueOf(length.getNano(), 9))
                            .stripTrailingZeros()
                            .toPlainString();
            return new Span(count, SECONDS);
        }
        if (length.toMinutes() % MINUTE != 0) {
            return new Span(Long.toString(length.toMinutes()), MINUTES);
        }
        return length.toDays() > 1 && length.toHours() % 24 == 0
                ? new Span(Long.toString(length.toDays()), DAYS)
                : new Span(Long.toString(length.toHours()), HOURS);
    }

    /** Whether the setup can have it; nothing at all is good too. */
    boolean good() {
        String typed = count.strip();
        return typed.isEmpty()
                || unit.matches("[SMHD]") && typed.matches(WHOLE)
                || unit.equals(SECONDS) && typed.matches(BROKEN);
    }

    /** As the setup has it. */
    String duration() {
        return (unit.equals(DAYS) ? "P" : "PT") + count.strip() + unit;
    }
}
