package yardlight.channels.modem;

import java.io.IOException;

/** There is no modem to talk to: no port, or one that does not answer. The message says why, for a person. */
final class Gone extends IOException {

    private static final long serialVersionUID = 1L;

    Gone(String why) {
        super(why);
    }

    Gone(String why, Throwable cause) {
        super(why, cause);
    }
}
