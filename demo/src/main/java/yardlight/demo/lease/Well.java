package yardlight.demo.lease;

import java.util.Random;

/** A well: an even flow that wanders by a tenth within hours, and slugs on top of it. */
final class Well {

    private static final double DAY = 1_440;
    private static final double SLUGS_A_DAY = 6;

    /** What all slugs of a day bring together on average, bbl; it comes off the even flow. */
    private static final double SLUGGED = SLUGS_A_DAY * 4 * 0.25;

    private final double base;
    private final Wander wander = new Wander(0.08, 240);
    private double share = 1;
    private double towards = 1;
    private double slugMinutes;
    private double slugRate;

    /** @param base bbl a day */
    Well(double base) {
        this.base = base;
    }

    double base() {
        return base;
    }

    /** It lifts nothing any more. */
    void off() {
        share = 0;
        towards = 0;
    }

    /** The tubing lets go of more and more of it: within a day it is two thirds of the way down to this share. */
    void leaksDownTo(double left) {
        towards = left;
    }

    /** What comes up within so many minutes, bbl. */
    double step(double minutes, Random random) {
        share += (towards - share) * (1 - Math.exp(-minutes / DAY));
        double even = Math.max(0, base - SLUGGED) / DAY * minutes * Math.max(0, 1 + wander.step(minutes, random));
        return share * (even + slug(minutes, random));
    }

    private double slug(double minutes, Random random) {
        // Two to six minutes of 0.1 to 0.4 bbl a minute.
        if (slugMinutes <= 0 && random.nextDouble() < SLUGS_A_DAY * minutes / DAY) {
            slugMinutes = LeaseDesign.between(random, 2, 6);
            slugRate = LeaseDesign.between(random, 0.1, 0.4);
        }
        double lasts = Math.min(minutes, Math.max(0, slugMinutes));
        slugMinutes -= minutes;
        return slugRate * lasts;
    }
}
