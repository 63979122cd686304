package yardlight.escalation.limit;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;

/**
 * A condition that began or ended, or that still holds with another value.
 *
 * @param holds whether it holds
 * @param turned whether that is new
 * @param value what it was found by; empty when there is no number to it
 * @param limit what that was held against
 * @param unit of both; empty for the point's own
 * @param at when it was found, the time of the reading
 * @param text what was found in words, up to 200 characters
 */
public record Finding(
        String condition,
        boolean holds,
        boolean turned,
        Optional<BigDecimal> value,
        Optional<BigDecimal> limit,
        Optional<String> unit,
        Instant at,
        Optional<String> text) {

    /** Without words. */
    public Finding(
            String condition,
            boolean holds,
            boolean turned,
            Optional<BigDecimal> value,
            Optional<BigDecimal> limit,
            Optional<String> unit,
            Instant at) {
        this(condition, holds, turned, value, limit, unit, at, Optional.empty());
    }
}
