package yardlight.gateway.posting;

import java.security.Principal;
import yardlight.escalation.setup.Box;

/**
 * The box behind a request, known by its key.
 *
 * @param hash the SHA-256 of the key that it showed or signed with, in hexadecimal digits
 */
public record PostingBox(Box box, String hash) implements Principal {

    @Override
    public String getName() {
        return box.id();
    }

    public String site() {
        return box.site();
    }
}
