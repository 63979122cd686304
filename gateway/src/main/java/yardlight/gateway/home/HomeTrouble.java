package yardlight.gateway.home;

/** The home or the file in it cannot be used; it was left as it is. */
final class HomeTrouble extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String action;

    HomeTrouble(String message, String action, Throwable cause) {
        super(message, cause);
        this.action = action;
    }

    /** What an operator can do. */
    String action() {
        return action;
    }
}
