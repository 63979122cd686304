package yardlight.escalation.alarm;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The numbers that came with a report, as the box wrote them ({@code 18.0} stays {@code 18.0}).
 *
 * @param value what was measured, in {@code unit}
 * @param limit what it was held against, in {@code unit}
 * @param unit up to 16 characters
 * @param text the box's own words, up to 200 characters
 */
public record Measured(
        Optional<BigDecimal> value, Optional<BigDecimal> limit, Optional<String> unit, Optional<String> text) {

    public static final Measured NOTHING =
            new Measured(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    private static final int LONGEST_WORDS = 200;

    /** Nothing but words, as many of them as there is room for. */
    public static Measured words(String words) {
        String kept = words.substring(0, Math.min(LONGEST_WORDS, words.length()));
        return new Measured(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(kept));
    }

    /** These numbers, or the ones before if nothing came with the report: a bare repeat does not unmeasure anything. */
    public Measured orElse(Measured before) {
        return equals(NOTHING) ? before : this;
    }
}
