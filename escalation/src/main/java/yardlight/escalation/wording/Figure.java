package yardlight.escalation.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A number as it is read: the way the box wrote it ({@code 18.0} keeps its zero) as long as that is short, else
 * rounded to about nine digits. From a million million up it is written with a power of ten: such a number comes from a broken
 * sensor and is only to be recognised as one. At most 18 characters.
 */
final class Figure {

    private static final int SHORT = 12;
    private static final int DIGITS = 9;
    private static final int DECIMALS = 6;

    private Figure() {}

    static String of(BigDecimal number) {
        long before = (long) number.precision() - number.scale();
        if (number.signum() == 0) {
            return BigDecimal.valueOf(0, Math.max(0, Math.min(number.scale(), DECIMALS)))
                    .toPlainString();
        }
        if (before > SHORT) {
            return power(number, before - 1);
        }
        if (before < -DECIMALS) {
            // Spelling it out, or even rounding it, could take more memory than there is.
            return "0";
        }
        // Now precision and scale are of one size, so this is no longer than the number that came in.
        String plain = number.toPlainString();
        return plain.length() <= SHORT ? plain : rounded(number, (int) before);
    }

    private static String rounded(BigDecimal number, int before) {
        int decimals = Math.max(0, Math.min(DECIMALS, DIGITS - Math.max(before, 1)));
        return number.setScale(Math.min(number.scale(), decimals), RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String power(BigDecimal number, long exponent) {
        String digits = number.unscaledValue().abs().toString();
        String decimals = digits.length() > 1 ? "." + digits.substring(1, Math.min(3, digits.length())) : "";
        return (number.signum() < 0 ? "-" : "") + digits.charAt(0) + decimals + "E+" + exponent;
    }
}
