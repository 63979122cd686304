package yardlight.escalation.limit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Measured numbers as they are shown beside a limit. */
final class Figures {

    private static final int USUAL = 5;
    private static final int ENOUGH = 12;

    private Figures() {}

    /**
     * A value in about five digits, with as many decimals as the limit has; more where it would look as if it were the limit,
     * and none of the noise that a conversion of units leaves.
     */
    static BigDecimal beside(double value, BigDecimal limit) {
        BigDecimal exact = BigDecimal.valueOf(value);
        int digits = USUAL;
        BigDecimal shown = exact.round(new MathContext(digits));
        while (digits < ENOUGH && shown.compareTo(limit) == 0 && exact.compareTo(limit) != 0) {
            shown = exact.round(new MathContext(++digits));
        }
        return scaled(shown, Math.max(0, limit.scale()));
    }

    /** A value alone. */
    static BigDecimal alone(double value) {
        return scaled(BigDecimal.valueOf(value).round(new MathContext(USUAL)), 0);
    }

    private static BigDecimal scaled(BigDecimal number, int least) {
        BigDecimal plain = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
        return plain.scale() < least ? plain.setScale(least, RoundingMode.UNNECESSARY) : plain;
    }
}
