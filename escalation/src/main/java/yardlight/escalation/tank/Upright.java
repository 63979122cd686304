package yardlight.escalation.tank;

/** A cylinder that stands on its end, by its inside diameter and the height of its shell. */
public record Upright(double diameter, double brim) implements Tank {

    public Upright {
        Tank.length("diameter", diameter);
        Tank.length("height", brim);
    }

    @Override
    public double volume(double height) {
        return area() * Tank.within(brim, height);
    }

    @Override
    public double height(double volume) {
        return Tank.within(brim, volume / area());
    }

    private double area() {
        return Math.PI / 4 * diameter * diameter;
    }
}
