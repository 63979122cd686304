package yardlight.gateway.strip;

import java.math.BigDecimal;
import java.math.MathContext;

/** Figures as they stand beside a curve: four digits are more than any gauge has. */
public final class Rounded {

    private static final MathContext DIGITS = new MathContext(4);

    private Rounded() {}

    /** {@code 18.4}, {@code 1520}, {@code 0.0312}. */
    public static String of(double value) {
        BigDecimal rounded = number(value).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** With its unit, if it has one: {@code 18.4 ft}. */
    public static String of(double value, String unit) {
        return unit.isEmpty() ? of(value) : of(value) + " " + unit;
    }

    /** The same to calculate with; whole figures keep their digits. */
    public static BigDecimal number(double value) {
        BigDecimal exact = BigDecimal.valueOf(value);
        return Math.abs(value) >= 1e4 ? BigDecimal.valueOf(Math.rint(value)) : exact.round(DIGITS);
    }
}
