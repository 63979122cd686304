package yardlight.escalation.tank;

/** A cylinder that lies on its side, with flat ends; it runs over at the top of its shell. */
public record Lying(double diameter, double length) implements Tank {

    /** Halvings of the diameter: more than a double can tell apart. */
    private static final int HALVINGS = 60;

    public Lying {
        Tank.length("diameter", diameter);
        Tank.length("length", length);
    }

    @Override
    public double brim() {
        return diameter;
    }

    /** The segment of the circle below the surface, times the length. */
    @Override
    public double volume(double height) {
        double radius = diameter / 2;
        double above = radius - Tank.within(diameter, height);
        double chord = Math.sqrt(Math.max(0, radius * radius - above * above));
        return length * (radius * radius * Math.acos(above / radius) - above * chord);
    }

    /** By halving: the segment has no inverse that can be written down. */
    @Override
    public double height(double volume) {
        double wanted = Tank.within(capacity(), volume);
        double low = 0;
        double high = diameter;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (volume(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
