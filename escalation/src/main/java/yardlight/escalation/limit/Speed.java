package yardlight.escalation.limit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * How much a value rose or fell within a while: against the least and the most that it was in it. What was read before the
 * while says nothing, so a gap in the readings ends the comparison.
 */
final class Speed {

    static final String NAME = "change";

    /** Samples of the while that are remembered. */
    private static final int KEPT = 24;

    /** A difference of two values has noise far behind the point: 1.2 less 1.0 is more than 0.2. */
    private static final double NOISE = 1e-9;

    private Speed() {}

    static void look(Round round, Change change, BigDecimal deadband) {
        double from = round.seconds() - change.within().toNanos() / 1e9;
        List<Double> before = round.noted(NAME);
        var window = new ArrayList<Double>();
        double least = round.value();
        double most = round.value();
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < before.size(); i += 2) {
            if (before.get(i) >= from) {
                last = before.get(i);
                window.add(last);
                window.add(before.get(i + 1));
                least = Math.min(least, before.get(i + 1));
                most = Math.max(most, before.get(i + 1));
            }
        }
        double step = change.within().toNanos() / 1e9 / KEPT;
        if (round.seconds() - last >= step) {
            window.add(round.seconds());
            window.add(round.value());
        }
        round.note(NAME, window);
        double risen = round.value() - least;
        double fallen = most - round.value();
        change.rise().ifPresent(by -> fast(round, Conditions.RISING, risen, by, deadband));
        change.fall().ifPresent(by -> fast(round, Conditions.FALLING, fallen, by, deadband));
    }

    /** The deadband is that of the limits, but never so wide that a value at rest would still be too fast. */
    private static void fast(Round round, String condition, double moved, BigDecimal by, BigDecimal deadband) {
        double limit = by.doubleValue();
        double band = Math.min(deadband.doubleValue(), limit / 2);
        boolean holds = round.holds(condition) ? moved >= limit - band : moved > limit * (1 + NOISE);
        round.say(condition, holds, moved, by);
    }
}
