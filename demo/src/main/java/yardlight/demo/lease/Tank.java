package yardlight.demo.lease;

/** An upright tank, open at the brim: what does not fit runs over. */
final class Tank {

    /** Cubic inches in a barrel. */
    private static final double BARREL = 9_702;

    private final double perFoot;
    private final double brim;
    private double held;

    /**
     * @param diameter inside, ft
     * @param brim ft
     * @param level at the beginning, ft
     */
    Tank(double diameter, double brim, double level) {
        double across = diameter * 12;
        this.perFoot = Math.PI / 4 * across * across * 12 / BARREL;
        this.brim = brim;
        this.held = level * perFoot;
    }

    double level() {
        return held / perFoot;
    }

    double held() {
        return held;
    }

    /** Barrels a foot of its height. */
    double perFoot() {
        return perFoot;
    }

    /** @return what ran over, bbl */
    double fill(double in) {
        double over = Math.max(0, held + in - brim * perFoot);
        held += in - over;
        return over;
    }

    /** @return what there was of it above that level, bbl */
    double draw(double wanted, double downTo) {
        double out = Math.max(0, Math.min(wanted, held - downTo * perFoot));
        held -= out;
        return out;
    }
}
