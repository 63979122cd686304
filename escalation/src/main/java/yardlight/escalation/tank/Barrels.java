package yardlight.escalation.tank;

/** The barrel of the trade: 42 US gallons of 231 cubic inches each. */
public final class Barrels {

    public static final double CUBIC_INCHES = 42 * 231;

    private static final double CUBIC_INCHES_IN_A_CUBIC_FOOT = 12 * 12 * 12;

    private Barrels() {}

    public static double ofCubicInches(double volume) {
        return volume / CUBIC_INCHES;
    }

    public static double ofCubicFeet(double volume) {
        return ofCubicInches(volume * CUBIC_INCHES_IN_A_CUBIC_FOOT);
    }
}
