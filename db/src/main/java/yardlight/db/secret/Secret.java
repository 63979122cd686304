package yardlight.db.secret;

import java.time.Instant;

/**
 * One of the secrets that a name had one after the other.
 *
 * @param from since when it is the one to be used
 */
public record Secret(byte[] content, Instant from) {

    public Secret {
        content = content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }

    /** Without what is secret. */
    @Override
    public String toString() {
        return "secret from " + from;
    }
}
