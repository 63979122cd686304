package yardlight.gateway.lane;

/** Nothing was stored; the caller may try again a little later. */
public class LaneBusy extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public LaneBusy(String message, Throwable cause) {
        super(message, cause);
    }
}
