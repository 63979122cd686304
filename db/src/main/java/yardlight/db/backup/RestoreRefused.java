package yardlight.db.backup;

/** A backup was not put in place; whatever was there before is there still. */
public class RestoreRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public RestoreRefused(String message, Throwable cause) {
        super(message, cause);
    }
}
