package yardlight.escalation.limit;

import java.util.List;

/**
 * The two cumulative sums of E. S. Page, Continuous inspection schemes, Biometrika 41 (1954): how far the values have strayed
 * upwards and downwards beyond the slack, neither ever below 0.
 */
record Sums(double high, double low) {

    static final String NAME = "drift";

    static final Sums NONE = new Sums(0, 0);

    /** A drift that went on for long must not take as long to be over: more than this many decisions do not count. */
    private static final double MOST = 2;

    /** By what was noted of them: which of the two it was that decided. */
    static boolean upwards(List<Double> noted) {
        return noted.get(2) > 0;
    }

    Sums next(double value, Drift drift) {
        double target = drift.target().doubleValue();
        double slack = drift.slack().doubleValue();
        return new Sums(Math.max(0, high + value - target - slack), Math.max(0, low + target - slack - value));
    }

    /** Whether it is more than what decides. */
    boolean signals(Drift drift) {
        return Math.max(high, low) > drift.decision().doubleValue();
    }

    private Sums capped(Drift drift) {
        double most = MOST * drift.decision().doubleValue();
        return new Sums(Math.min(high, most), Math.min(low, most));
    }

    /** A drift is over when the sum that found it is back at 0. */
    static void look(Round round, Drift drift) {
        List<Double> noted = round.noted(NAME);
        Sums before = noted.isEmpty() ? NONE : new Sums(noted.get(0), noted.get(1));
        boolean upwards = !noted.isEmpty() && upwards(noted);
        Sums now = before.next(round.value(), drift);
        boolean holds = now.signals(drift) || round.holds(Conditions.DRIFT) && (upwards ? now.high() : now.low()) > 0;
        Sums kept = now.capped(drift);
        boolean side = now.signals(drift) ? now.high() >= now.low() : upwards;
        round.note(NAME, List.of(kept.high(), kept.low(), side ? 1.0 : 0.0));
        round.say(Conditions.DRIFT, holds, round.value(), drift.target());
    }
}
