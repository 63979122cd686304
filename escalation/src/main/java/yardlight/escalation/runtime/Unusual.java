package yardlight.escalation.runtime;

/**
 * How far a share of the day has to be off to be worth a text.
 *
 * @param least as a share of the day, whatever is usual
 * @param deviations and so many of the deviations that days usually have
 */
public record Unusual(double least, double deviations) {

    /** A tenth of the day, and three deviations: chosen by a study of made-up leases. */
    public static final Unusual USUAL = new Unusual(0.1, 3);

    public Unusual {
        if (!(least > 0 && least < 1)) {
            throw new IllegalArgumentException("least must lie between 0 and 1: " + least);
        }
        if (!(deviations > 0)) {
            throw new IllegalArgumentException("deviations must be above 0: " + deviations);
        }
    }

    double by(double deviation) {
        return Math.max(least, deviations * deviation);
    }
}
