package yardlight.escalation.limit;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Fixed limits, all in the point's unit. A high one is passed by a value above it and no longer once a value is below it by
 * more than the deadband; a low one is the mirror image (OPC UA Part 9, B.1.5).
 *
 * @param deadband 0 or more
 */
public record Limits(
        Optional<BigDecimal> highHigh,
        Optional<BigDecimal> high,
        Optional<BigDecimal> low,
        Optional<BigDecimal> lowLow,
        BigDecimal deadband) {

    public Limits {
        if (deadband.signum() < 0) {
            throw new IllegalArgumentException("deadband must not be negative: " + deadband);
        }
        BigDecimal below = null;
        for (Optional<BigDecimal> one : java.util.List.of(lowLow, low, high, highHigh)) {
            if (one.isPresent() && below != null && below.compareTo(one.get()) >= 0) {
                throw new IllegalArgumentException(
                        "limits must rise from lowLow over low and high to highHigh: " + below + ", " + one.get());
            }
            below = one.orElse(below);
        }
    }
}
