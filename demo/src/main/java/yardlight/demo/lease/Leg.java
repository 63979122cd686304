package yardlight.demo.lease;

/** One leg of the separator with its dump valve: it fills, opens, and lets go of nearly all of it in a rush. */
final class Leg {

    private static final double OPENS = 1.5;
    private static final double SHUTS = 0.3;
    private static final double RUSH = 3;

    private double held = SHUTS;
    private boolean open;

    double held() {
        return held;
    }

    /**
     * Lets so much in.
     *
     * @return what it dumps within those minutes, bbl
     */
    double step(double in, double minutes) {
        held += in;
        if (held >= OPENS) {
            open = true;
        }
        if (!open) {
            return 0;
        }
        double out = Math.min(held - SHUTS, RUSH * minutes);
        held -= out;
        if (held <= SHUTS + 1e-9) {
            open = false;
        }
        return out;
    }
}
