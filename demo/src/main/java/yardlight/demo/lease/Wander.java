package yardlight.demo.lease;

import java.util.Random;

/** A number that wanders about zero and is always drawn back to it: an Ornstein-Uhlenbeck process, exact for any step. */
final class Wander {

    private final double deviation;
    private final double memory;
    private double now;

    /**
     * @param deviation its standard deviation in the long run
     * @param memory minutes after which 37 % of a deviation is left
     */
    Wander(double deviation, double memory) {
        this.deviation = deviation;
        this.memory = memory;
    }

    /** Goes on by so many minutes. */
    double step(double minutes, Random random) {
        double kept = Math.exp(-minutes / memory);
        now = now * kept + deviation * Math.sqrt(1 - kept * kept) * random.nextGaussian();
        return now;
    }
}
