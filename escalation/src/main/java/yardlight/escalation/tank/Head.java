package yardlight.escalation.tank;

/**
 * The height of a liquid by the pressure at the bottom: fresh water presses with 0.433 psi for each foot, anything else
 * with as much more or less as it is heavier or lighter.
 *
 * @param gravity how heavy it is against fresh water: 1.0 for that, about 1.1 for brine, below 1 for oil
 */
public record Head(double gravity) {

    /** psi for each foot of fresh water, as the trade has it. */
    public static final double PSI_PER_FOOT = 0.433;

    public static final Head FRESH_WATER = new Head(1);

    private static final double LIGHTEST = 0.5;
    private static final double HEAVIEST = 2.5;

    public Head {
        if (!(gravity >= LIGHTEST && gravity <= HEAVIEST)) {
            throw new IllegalArgumentException(
                    "gravity must lie between " + LIGHTEST + " and " + HEAVIEST + ": " + gravity);
        }
    }

    /** An oil by its API gravity: the higher, the lighter, and 10 is water. */
    public static Head ofApi(double api) {
        return new Head(141.5 / (131.5 + api));
    }

    /** The height in feet that presses with so many psi. */
    public double feet(double psi) {
        return psi / (PSI_PER_FOOT * gravity);
    }

    /** The pressure in psi below so many feet. */
    public double psi(double feet) {
        return feet * PSI_PER_FOOT * gravity;
    }
}
