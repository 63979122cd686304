package yardlight.escalation.limit;

import java.math.BigDecimal;
import java.time.Duration;

/** What must be more than nothing. */
final class Positive {

    private Positive() {}

    static void require(String what, BigDecimal number) {
        if (number.signum() <= 0) {
            throw new IllegalArgumentException(what + " must be above 0: " + number);
        }
    }

    static void require(String what, Duration span) {
        if (span.isNegative() || span.isZero()) {
            throw new IllegalArgumentException(what + " must be above 0: " + span);
        }
    }
}
