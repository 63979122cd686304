package yardlight.escalation.notice;

import java.util.Locale;

/** What a notice is for. */
public enum Purpose {
    /** It calls somebody: it is about callouts. */
    CALL,
    /** It says that all is well, or what is not, at the time that the contact chose. About no callout. */
    ALLS_WELL,
    /** It says what became of callouts that somebody was called for: that another one has them, or that they are over. */
    NEWS,
    /** It says that somebody signed in with something new. About no callout. */
    SIGN_IN,
    /** It tries one line, and goes by no other. About no callout. */
    TEST,
    /** It says how a request to shut in stands. About no callout; neither quiet hours nor a limit hold it. */
    SHUT_IN,
    /** It asks somebody to take a turn, says what became of that, or that a turn changes hands. About no callout. */
    TURN;

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The purpose with this word. */
    public static Purpose of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
