package yardlight.escalation.shutin;

import java.time.Instant;

/**
 * Somebody has asked by text, and has yet to send back the code that went to their line.
 *
 * @param address from which they wrote, and from which the code has to come
 * @param code of six digits
 * @param until up to when it is taken, exclusive
 */
public record Wish(String contact, String address, int code, Instant until) {

    public static final int LEAST_CODE = 100_000;
    public static final int MOST_CODE = 999_999;

    public Wish {
        if (code < LEAST_CODE || code > MOST_CODE) {
            throw new IllegalArgumentException("code must have six digits: " + code);
        }
    }

    public boolean grantedBy(String who, String from, int said, Instant now) {
        return contact.equals(who) && address.equals(from) && code == said && now.isBefore(until);
    }
}
