package yardlight.gateway.document;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Numbers that measure something. The bounds keep {@code 1e999999999} from becoming a gigabyte of zeros: at most 18
 * digits, of which at most 9 after the point.
 */
final class Numbers {

    private static final Pattern FORM = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");
    private static final int DIGITS = 18;
    private static final int FRACTION = 9;

    private Numbers() {}

    /** Empty when it is none, or out of bounds. Digits after the point stay as written. */
    static Optional<BigDecimal> of(String written) {
        if (written.length() > 40 || !FORM.matcher(written).matches()) {
            return Optional.empty();
        }
        var number = new BigDecimal(written);
        long whole = (long) number.precision() - number.scale();
        if (number.scale() > FRACTION || number.precision() > DIGITS || whole > DIGITS) {
            return Optional.empty();
        }
        return Optional.of(number.scale() < 0 ? number.setScale(0) : number);
    }
}
