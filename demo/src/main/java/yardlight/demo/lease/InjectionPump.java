package yardlight.demo.lease;

/** Motor, belt and pump. What the box sees is whether the motor runs, not whether anything moves. */
final class InjectionPump {

    /** The suction sits this high, ft; below it the pump draws air. */
    static final double SUCTION = 0.5;

    private final double perDay;
    private boolean powered = true;
    private boolean fused = true;
    private boolean belted = true;
    private double passes = 1;
    private boolean runs;

    /** @param perDay bbl */
    InjectionPump(double perDay) {
        this.perDay = perDay;
    }

    void losePower() {
        powered = false;
    }

    void blowFuse() {
        fused = false;
    }

    void burnBelt() {
        belted = false;
    }

    /** @param left share of its flow that still passes */
    void choke(double left) {
        passes = left;
    }

    boolean powered() {
        return powered;
    }

    boolean runs() {
        return runs;
    }

    /**
     * Runs or not, as it is asked to.
     *
     * @return what it moves within the minutes if there is enough to draw, bbl
     */
    double step(boolean wanted, double minutes) {
        runs = wanted && powered && fused;
        return runs && belted ? perDay * passes * minutes / 1_440 : 0;
    }
}
