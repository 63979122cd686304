package yardlight.gateway.lane;

/** The box is not part of the setup; nothing was stored. */
public class UnknownBox extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public UnknownBox(String reason) {
        super(reason);
    }
}
