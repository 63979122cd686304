package yardlight.demo.lease;

import java.util.Random;

/** The line into the ground: its pressure follows the flow, and falls slowly when nothing flows. */
final class InjectionLine {

    /** What the ground gives back when nothing flows, psi. */
    private static final double GROUND = 380;

    /** What the full flow of the pump adds, psi. */
    private static final double FLOW = 240;

    private static final double RISES_WITHIN = 2;
    private static final double FALLS_WITHIN = 12;

    private final Wander ground = new Wander(8, 2_000);
    private double held = 1;
    private double psi = GROUND;

    double psi() {
        return psi;
    }

    /** @param kept share of pressure and of flow that stays in the line */
    void leak(double kept) {
        held = kept;
    }

    /**
     * @param flow what goes in, as a share of the pump's full flow
     * @return the share of what goes in that reaches the ground
     */
    double step(double flow, Step step) {
        Random random = step.random();
        double target = held * (GROUND + ground.step(step.minutes(), random) + FLOW * flow);
        double within = target > psi || held < 1 ? RISES_WITHIN : FALLS_WITHIN;
        psi += (target - psi) * (1 - Math.exp(-step.minutes() / within));
        return held;
    }
}
