package yardlight.channels.smpp;

import java.io.IOException;

/** Nothing of it can have been taken: it was not written, or not to its end. The message says why, for a person. */
final class Unsent extends IOException {

    private static final long serialVersionUID = 1L;

    Unsent(String why) {
        super(why);
    }
}
