package yardlight.channels.smpp;

import java.io.IOException;

/** It was written, and no answer came: it may have been taken. The message says what came instead, for a person. */
final class Unanswered extends IOException {

    private static final long serialVersionUID = 1L;

    Unanswered(String why) {
        super(why);
    }
}
