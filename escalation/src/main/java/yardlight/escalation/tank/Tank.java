package yardlight.escalation.tank;

/**
 * The inside of a tank. Heights are those of the liquid above the bottom, in one unit of length; volumes are in the cube
 * of that unit, or in the unit of the strapping table. Both ways never fall as their argument rises, and each undoes the
 * other between bottom and brim.
 *
 * <p>At the ends: a height of 0 or less is an empty tank, one at the brim or above it a full one. What is not a number is
 * refused with an {@link IllegalArgumentException}.
 */
public sealed interface Tank permits Upright, Rectangular, Lying, Strapping {

    /** Where it runs over. */
    double brim();

    /** What it holds when filled up to this height; from 0 to {@link #capacity()}. */
    double volume(double height);

    /** How high this volume stands; from 0 to {@link #brim()}. */
    double height(double volume);

    /** What it holds up to the brim. */
    default double capacity() {
        return volume(brim());
    }

    /** The value, or the end of 0 to {@code most} that it lies beyond. */
    static double within(double most, double value) {
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException("height or volume must be a number: " + value);
        }
        return Math.max(0, Math.min(most, value));
    }

    /** Refuses what cannot be a length. */
    static void length(String what, double length) {
        if (!(length > 0) || Double.isInfinite(length)) {
            throw new IllegalArgumentException(what + " must be above 0: " + length);
        }
    }
}
