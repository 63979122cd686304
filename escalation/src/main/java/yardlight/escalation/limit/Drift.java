package yardlight.escalation.limit;

import java.math.BigDecimal;

/**
 * When a value that should stay at one place has left it, by Page's cumulative sums: too little at a time for a limit, but for
 * too long. All in the point's unit.
 *
 * @param target where it should be
 * @param slack how far from there it may be without counting, 0 or more; half of the shift that is to be found is usual
 * @param decision how much may come together beyond the slack before it is a drift, above 0
 */
public record Drift(BigDecimal target, BigDecimal slack, BigDecimal decision) {
    public Drift {
        if (slack.signum() < 0) {
            throw new IllegalArgumentException("slack must not be negative: " + slack);
        }
        Positive.require("decision", decision);
    }
}
