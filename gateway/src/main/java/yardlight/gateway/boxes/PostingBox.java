package yardlight.gateway.boxes;

import java.security.Principal;
import yardlight.escalation.setup.Box;

/** The box behind a request, known by its key. */
record PostingBox(Box box) implements Principal {

    @Override
    public String getName() {
        return box.id();
    }

    String site() {
        return box.site();
    }
}
