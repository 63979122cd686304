package yardlight.demo.lease;

import java.util.Random;

/** Parts water from oil and holds the gas at {@value #HELD} psi; a hole upstream lets the pressure go within minutes. */
final class Separator {

    static final double HELD = 30;

    /** What is left when a flow line is open, psi. */
    private static final double OPEN = 5;

    private static final double FALLS_WITHIN = 3;
    private static final double RISES_WITHIN = 8;

    private static final double DIPS_A_DAY = 0.4;

    private final double waterCut;
    private final Leg water = new Leg();
    private final Leg oil = new Leg();
    private final Wander valve = new Wander(0.5, 20);
    private double psi = HELD;
    private double dipMinutes;
    private double dipTo;

    Separator(double waterCut) {
        this.waterCut = waterCut;
    }

    /** What it dumped, bbl. */
    record Dumped(double water, double oil) {}

    double psi() {
        return psi;
    }

    double held() {
        return water.held() + oil.held();
    }

    /**
     * @param in what reaches it within the minutes, bbl
     * @param gas gas that reaches it, as a share of the usual
     * @param lineOpen whether a flow line before it is open to the air
     */
    Dumped step(double in, double gas, boolean lineOpen, Step step) {
        // The valve to the gas line can hold the pressure with half of the gas, not with less.
        Random random = step.random();
        double target = lineOpen ? OPEN : Math.min(dip(step), HELD * Math.min(1, gas / 0.5));
        double within = target < psi ? FALLS_WITHIN : RISES_WITHIN;
        psi += (target - psi) * (1 - Math.exp(-step.minutes() / within));
        psi = Math.max(0, psi + 0.1 * valve.step(step.minutes(), random));
        return new Dumped(water.step(in * waterCut, step.minutes()), oil.step(in * (1 - waterCut), step.minutes()));
    }

    /** Every few days the valve hangs open for some minutes, which is nobody's concern. */
    private double dip(Step step) {
        if (dipMinutes <= 0 && step.random().nextDouble() < DIPS_A_DAY * step.minutes() / 1_440) {
            dipMinutes = LeaseDesign.between(step.random(), 2, 6);
            dipTo = LeaseDesign.between(step.random(), 20, 26);
        }
        dipMinutes -= step.minutes();
        return dipMinutes > 0 ? dipTo : HELD;
    }
}
