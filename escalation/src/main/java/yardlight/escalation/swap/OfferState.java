package yardlight.escalation.swap;

import java.util.Locale;

/** Where a turn stands that somebody asked others to take. */
public enum OfferState {
    /** The others are asked. */
    OPEN,
    /** Everybody who was asked said no. Who thinks again in time may still take it. */
    DECLINED,
    /** Somebody has it, and the roster says so. */
    TAKEN,
    /** Nobody took it in time. */
    EXPIRED,
    /** Whoever asked took it back. */
    WITHDRAWN,
    /** The roster was changed meanwhile: there is nothing left to take. */
    LAPSED;

    /** Whether somebody can still take it. */
    public boolean takeable() {
        return this == OPEN || this == DECLINED;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The state with this word. */
    public static OfferState of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
