package yardlight.escalation.heartbeat;

/**
 * How sure one may be that what has not come yet does not come: <em>phi</em>, minus the decimal logarithm of the chance
 * that it is only late (phi accrual, Hayashibara, Defago, Yared, Katayama, SRDS 2004). With phi 1, 2, 3 one suspicion in
 * 10, 100, 1,000 is wrong. Lateness is taken as normal; times are in seconds.
 */
final class Phi {

    private static final double HALF_LOG_TWO_PI = 0.918938533204672742;

    /** From here on the fraction is quicker than the series, and both are good to 12 digits. */
    private static final double TAIL = 2;

    private static final int TERMS = 40;

    private Phi() {}

    /** @param deviation standard deviation; more than nothing */
    static double of(double waited, double mean, double deviation) {
        return -logTail((waited - mean) / deviation) / Math.log(10);
    }

    /**
     * The wait after which it is reached.
     *
     * @param phi more than nothing
     */
    static double reached(double phi, double mean, double deviation) {
        double wanted = phi * Math.log(10);
        // Never too small, and the curve bends upwards: each step comes nearer from the same side.
        double z = Math.sqrt(2 * wanted);
        for (int i = 0; i < 20; i++) {
            double log = logTail(z);
            double step = (-log - wanted) * Math.exp(log + z * z / 2 + HALF_LOG_TWO_PI);
            z -= step;
            if (Math.abs(step) < 1e-9) {
                break;
            }
        }
        return mean + z * deviation;
    }

    /**
     * Natural logarithm of the chance that a standard normal value is more than {@code z}. Never by way of one minus the
     * chance that it is less: nothing is left of that beyond 8. Abramowitz and Stegun 26.2.11 and 26.2.14.
     */
    private static double logTail(double z) {
        if (z < 0) {
            return Math.log1p(-Math.exp(logTail(-z)));
        }
        double logDensity = -z * z / 2 - HALF_LOG_TWO_PI;
        if (z < TAIL) {
            double term = z;
            double sum = z;
            for (int i = 1; i < TERMS; i++) {
                term *= z * z / (2 * i + 1);
                sum += term;
            }
            return Math.log(0.5 - sum * Math.exp(logDensity));
        }
        double fraction = z;
        for (int i = TERMS; i > 0; i--) {
            fraction = z + i / fraction;
        }
        return logDensity - Math.log(fraction);
    }
}
