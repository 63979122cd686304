package yardlight.demo.lease;

/** Shows what is there with a little noise, in steps; may get stuck, or drift away from the truth. */
final class Sensor {

    private final double noise;
    private final double resolution;
    private double driftPerDay;
    private double drifted;
    private boolean stuck;
    private double shows;

    Sensor(double noise, double resolution) {
        this.noise = noise;
        this.resolution = resolution;
    }

    void stick() {
        stuck = true;
    }

    /** @param perDay in its own unit; below zero it reads ever lower */
    void drift(double perDay) {
        driftPerDay = perDay;
    }

    double shows() {
        return shows;
    }

    void step(double truth, Step step) {
        drifted += driftPerDay * step.minutes() / 1_440;
        double seen = truth + drifted + noise * step.random().nextGaussian();
        if (!stuck) {
            shows = Math.max(0, Math.round(seen / resolution) * resolution);
        }
    }
}
