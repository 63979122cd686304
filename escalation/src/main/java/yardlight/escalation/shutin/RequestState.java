package yardlight.escalation.shutin;

import java.util.Locale;

/** Where a request to shut in stands. */
public enum RequestState {
    /** Nothing has gone to the site yet: it certainly has not been done. */
    ASKED,
    /** A request to the relay is under way; stored before it leaves, so that no crash can hide it. */
    TRYING,
    /** It went out and nobody knows whether the relay took it. */
    UNCERTAIN,
    /** The box was given it, or the relay took it. That is not done. */
    FETCHED,
    /** The site said that it is shut in. */
    CONFIRMED,
    /** The site said that it does not do it. */
    REFUSED,
    /** Its time ran out before anything went to the site. */
    EXPIRED,
    /** It went to the site, and no confirmation came in time: it may be done or not. */
    UNCONFIRMED,
    /** The owner turned it off, changed its settings or took the site away while it was open. */
    WITHDRAWN;

    /** Whether something is still to come of it by itself. */
    public boolean open() {
        return ordinal() <= FETCHED.ordinal();
    }

    /** Whether it may have reached the site. */
    public boolean mayHaveArrived() {
        return this != ASKED && this != EXPIRED;
    }

    /** Whether it came to a bad end: the site may go on producing and nobody there says otherwise. */
    public boolean failed() {
        return this == REFUSED || this == EXPIRED || this == UNCONFIRMED;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The state with this word. */
    public static RequestState of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
