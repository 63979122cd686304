package yardlight.escalation.tank;

/** A box of four upright walls, by what it measures inside. */
public record Rectangular(double length, double width, double brim) implements Tank {

    public Rectangular {
        Tank.length("length", length);
        Tank.length("width", width);
        Tank.length("height", brim);
    }

    @Override
    public double volume(double height) {
        return length * width * Tank.within(brim, height);
    }

    @Override
    public double height(double volume) {
        return Tank.within(brim, volume / (length * width));
    }
}
