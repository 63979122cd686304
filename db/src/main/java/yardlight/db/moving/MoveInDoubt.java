package yardlight.db.moving;

/** The database failed while it was told that all is in: everything was moved, or nothing. The next start finds out. */
public class MoveInDoubt extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public MoveInDoubt(String message, Throwable cause) {
        super(message, cause);
    }
}
