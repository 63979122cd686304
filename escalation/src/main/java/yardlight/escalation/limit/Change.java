package yardlight.escalation.limit;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;

/**
 * How much a value may change in a while.
 *
 * @param rise above 0, in the point's unit
 * @param fall above 0, in the point's unit
 * @param within the while, above 0
 */
public record Change(Optional<BigDecimal> rise, Optional<BigDecimal> fall, Duration within) {
    public Change {
        rise.ifPresent(by -> Positive.require("rise", by));
        fall.ifPresent(by -> Positive.require("fall", by));
        Positive.require("within", within);
    }
}
