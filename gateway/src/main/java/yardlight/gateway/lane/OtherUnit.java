package yardlight.gateway.lane;

/** A point's readings are stored in another unit than these come in; nothing was stored. Whoever posts looks again. */
public class OtherUnit extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public OtherUnit(String point) {
        super("the readings of " + point + " are stored in another unit by now");
    }
}
