package yardlight.demo.lease;

/** The truck that fetches the oil: comes by day when there is a load of it, and is through in under an hour. */
final class Hauler {

    private static final double LOAD = 160;
    private static final double A_MINUTE = 4;
    private static final double CALLED_AT = 9;
    private static final double KEPT = 1;

    private double still;

    /** @return what it took, bbl */
    double step(Tank oil, double sinceMidnight, double minutes) {
        boolean byDay = sinceMidnight >= 9 * 60 && sinceMidnight < 15 * 60;
        if (still <= 0 && byDay && oil.level() >= CALLED_AT) {
            still = LOAD;
        }
        double took = oil.draw(Math.min(still, A_MINUTE * minutes), KEPT);
        still -= took;
        return took;
    }
}
