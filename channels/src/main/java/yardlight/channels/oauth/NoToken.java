package yardlight.channels.oauth;

import java.io.IOException;

/** There is no token, and the message says why in words for a person. */
public final class NoToken extends IOException {

    private static final long serialVersionUID = 1L;

    public NoToken(String why) {
        super(why);
    }
}
