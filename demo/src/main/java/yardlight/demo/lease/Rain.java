package yardlight.demo.lease;

import java.util.Random;

/** A cloudburst over a tank whose hatch stands open: what falls on the roof runs in, an inch for an inch. */
final class Rain {

    static final Rain NONE = new Rain(0, 0);

    private final double perHour;
    private double minutes;

    /**
     * @param perHour inches
     * @param minutes how long it lasts
     */
    private Rain(double perHour, double minutes) {
        this.perHour = perHour;
        this.minutes = minutes;
    }

    /** Two to four inches an hour, for one to three hours. */
    static Rain drawn(Random random) {
        return new Rain(LeaseDesign.between(random, 2, 4), LeaseDesign.between(random, 60, 180));
    }

    /** @return what runs into the tank within the minutes, bbl */
    double step(Tank tank, double passing) {
        double falls = Math.min(passing, Math.max(0, minutes));
        minutes = Math.max(0, minutes - passing);
        return tank.perFoot() / 12 * perHour * falls / 60;
    }
}
