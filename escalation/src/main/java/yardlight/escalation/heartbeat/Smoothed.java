package yardlight.escalation.heartbeat;

/**
 * The smoothed time between two heartbeats and how far they stray from it, in seconds: SRTT and RTTVAR of RFC 6298, 2.
 *
 * @param mean zero when nothing is known
 */
public record Smoothed(double mean, double deviation) {

    static final Smoothed UNKNOWN = new Smoothed(0, 0);

    /** What is the standard deviation of normal values whose mean deviation is one: the root of pi / 2. */
    private static final double STANDARD = 1.2533141373155;

    static Smoothed first(double measured) {
        return new Smoothed(measured, measured / 2);
    }

    Smoothed next(double measured) {
        return new Smoothed(mean * 7 / 8 + measured / 8, deviation * 3 / 4 + Math.abs(mean - measured) / 4);
    }

    /** RTO, without the limits that belong to retransmission. */
    double timeout(double granularity) {
        return mean + Math.max(granularity, 4 * deviation);
    }

    double standardDeviation() {
        return deviation * STANDARD;
    }
}
