package yardlight.escalation.limit;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Whether a current loop measures anything, by NAMUR NE 43: from 3.8 to 20.5 mA it does, at 3.6 mA and below or 21 mA and
 * above it is broken. What lies between is neither a measurement nor a fault.
 */
final class Loop {

    static final double FAILED_LOW = 3.6;
    static final double LEAST = 3.8;
    static final double MOST = 20.5;
    static final double FAILED_HIGH = 21;
    private static final double MILLIONTH = 1e6;

    private Loop() {}

    /** Scaling and back may lose a digit far behind the point. */
    private static double current(double value, Current current) {
        return Math.rint(current.milliamps(value) * MILLIONTH) / MILLIONTH;
    }

    static boolean measures(double value, Current current) {
        double milliamps = current(value, current);
        return milliamps >= LEAST && milliamps <= MOST;
    }

    static void look(Round round, Current loop) {
        double milliamps = current(round.value(), loop);
        boolean failed = milliamps <= FAILED_LOW || milliamps >= FAILED_HIGH;
        if (failed || measures(round.value(), loop)) {
            var limit = BigDecimal.valueOf(milliamps < LEAST ? FAILED_LOW : FAILED_HIGH);
            round.say(
                    Conditions.FAULT,
                    failed,
                    Optional.of(Figures.beside(milliamps, limit)),
                    Optional.of(limit),
                    Optional.of("mA"));
        }
    }
}
