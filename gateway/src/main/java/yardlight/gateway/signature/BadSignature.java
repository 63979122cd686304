package yardlight.gateway.signature;

/** A signature that proves nothing; the message says why, for the one who wires the box. Carries no stack: it is not a bug. */
public final class BadSignature extends Exception {

    private static final long serialVersionUID = 1L;

    BadSignature(String reason) {
        super(reason, null, false, false);
    }
}
