package yardlight.db.moving;

/** Nothing was moved; whatever was there before is there still, and as it was. */
public class MoveRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public MoveRefused(String message) {
        super(message);
    }

    public MoveRefused(String message, Throwable cause) {
        super(message, cause);
    }
}
