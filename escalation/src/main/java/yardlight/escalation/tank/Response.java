package yardlight.escalation.tank;

import java.time.Duration;

/**
 * How long it takes to do something about a site.
 *
 * @param reach until somebody has read a text and taken it on
 * @param drive until they are there
 * @param act until what they do shows
 * @param margin by how much all of that is multiplied, at least 1
 */
public record Response(Duration reach, Duration drive, Duration act, double margin) {

    /** Unless somebody says otherwise: a lease within forty minutes of somebody who sleeps. */
    public static final Response USUAL =
            new Response(Duration.ofMinutes(20), Duration.ofMinutes(40), Duration.ofMinutes(15), 1.5);

    private static final double LARGEST = 10;

    public Response {
        require("reach", reach);
        require("drive", drive);
        require("act", act);
        if (!(margin >= 1 && margin <= LARGEST)) {
            throw new IllegalArgumentException("margin must lie between 1 and " + LARGEST + ": " + margin);
        }
        if (reach.plus(drive).plus(act).isZero()) {
            throw new IllegalArgumentException("a response must take time: " + reach);
        }
    }

    private static void require(String what, Duration length) {
        if (length.isNegative()) {
            throw new IllegalArgumentException(what + " must not be negative: " + length);
        }
    }

    /** The time that has to be left when people are called. */
    public Duration needed() {
        return Duration.ofMillis(Math.round(reach.plus(drive).plus(act).toMillis() * margin));
    }

    /** The volume above which less time than that is left, at so much inflow an hour. */
    public double workedBack(double capacity, double rate) {
        return Math.max(0, capacity - rate * needed().toMillis() / 3_600_000.0);
    }
}
