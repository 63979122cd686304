package yardlight.channels.modem;

import java.io.IOException;

/** The modem is there and cannot send this text, or any, now. The message says why, for a person. */
final class NotReady extends IOException {

    private static final long serialVersionUID = 1L;

    NotReady(String why) {
        super(why);
    }
}
