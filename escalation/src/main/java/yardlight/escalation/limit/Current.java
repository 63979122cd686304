package yardlight.escalation.limit;

import java.math.BigDecimal;

/**
 * A loop of 4 to 20 mA.
 *
 * @param low what 4 mA stands for, in the point's unit
 * @param high what 20 mA stands for, in the point's unit; below {@code low} when the loop runs the other way
 */
public record Current(BigDecimal low, BigDecimal high) {

    private static final double ZERO = 4;
    private static final double SPAN = 16;

    public Current {
        if (low.compareTo(high) == 0) {
            throw new IllegalArgumentException("low and high of a current must differ: " + low);
        }
    }

    /** What a current stands for, in the point's unit; beyond the ends of the loop as well. */
    public double scaled(double milliamps) {
        return low.doubleValue() + (milliamps - ZERO) / SPAN * width();
    }

    /** The current behind a scaled value, in mA. */
    public double milliamps(double value) {
        return ZERO + (value - low.doubleValue()) / width() * SPAN;
    }

    private double width() {
        return high.doubleValue() - low.doubleValue();
    }
}
