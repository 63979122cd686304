package yardlight.escalation.trend;

import java.time.Duration;

/**
 * When a pressure falls so fast that it is a leak until shown otherwise.
 *
 * @param within the while in which the fall is measured
 * @param factor by how much it has to be larger than the largest fall that the point ever had, at least 1
 * @param least and how large it has to be anyhow, as a share of the usual pressure
 * @param learn for how long falls are only watched at first
 */
public record FallRules(Duration within, double factor, double least, Duration learn) {

    /** Half as large again as ever within ten minutes, at least a tenth of the pressure, after three days. */
    public static final FallRules USUAL = new FallRules(Duration.ofMinutes(10), 1.5, 0.1, Duration.ofDays(3));

    public FallRules {
        if (within.isNegative() || within.isZero()) {
            throw new IllegalArgumentException("within must be positive: " + within);
        }
        if (!(factor >= 1)) {
            throw new IllegalArgumentException("factor must be at least 1: " + factor);
        }
        if (!(least > 0 && least < 1)) {
            throw new IllegalArgumentException("least must lie between 0 and 1: " + least);
        }
        if (learn.isNegative()) {
            throw new IllegalArgumentException("learn must not be negative: " + learn);
        }
    }
}
