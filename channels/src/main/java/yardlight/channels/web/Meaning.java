package yardlight.channels.web;

import yardlight.channels.Attempt;

/** What answers mean for a message whoever gives them (RFC 9110 15), and what it means that there is none. */
public final class Meaning {

    private Meaning() {}

    /**
     * No answer came; that is between us and whoever was asked.
     *
     * @param why as it may be kept
     */
    public static Attempt of(Reply.Silence silence, String why) {
        Attempt attempt = silence.sent() ? Attempt.unknown("sent, but not confirmed: " + why) : Attempt.deferred(why);
        return attempt.forEveryMessage();
    }

    /** Not now, and for as long as {@code Retry-After} asks. */
    public static Attempt later(Reply.Answer answer, String words) {
        return RetryAfter.in(answer.headers())
                .map(asked -> Attempt.deferred(words, asked))
                .orElseGet(() -> Attempt.deferred(words));
    }

    /** 3xx: the message stays here, for a secret must not follow where somebody else points. */
    public static Attempt redirected(String words) {
        return Attempt.deferred("a redirect, which is not followed: " + words).forEveryMessage();
    }

    /** A status code of none of the hundreds that end an exchange. */
    public static Attempt nothing(String words) {
        return Attempt.unknown("no answer that means anything: " + words).forEveryMessage();
    }
}
