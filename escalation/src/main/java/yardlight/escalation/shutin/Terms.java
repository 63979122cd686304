package yardlight.escalation.shutin;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;

/**
 * How a site is asked to shut in, as the owner wrote it in the setup. They turn nothing on: that takes the owner's consent
 * to exactly these, see {@link Consent}.
 *
 * @param through the id of the box that fetches the request, or the name of the relay that is sent it
 * @param point where the site says what became of it
 * @param done the condition that is active once the site is shut in
 * @param refused the condition that is active when the site does not do it
 * @param expires how long after it was asked for it may be done; above zero
 * @param confirmWithin how long after it was asked for the confirmation is waited for; not shorter than {@code expires},
 *     so that nothing is at large any more when people are told that it failed
 * @param lastCall it is asked for by itself once the time to overflow is shorter than this; empty: never
 */
public record Terms(
        Way way,
        String through,
        String point,
        String done,
        String refused,
        Duration expires,
        Duration confirmWithin,
        Optional<Duration> lastCall) {

    public static final String POINT = "shut-in";
    public static final String DONE = "done";
    public static final String REFUSED = "refused";
    public static final Duration EXPIRES = Duration.ofMinutes(5);

    /** How it gets to the site. */
    public enum Way {
        BOX,
        RELAY;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The way with this word. */
        public static Way of(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT));
        }
    }

    public Terms {
        if (expires.isNegative() || expires.isZero()) {
            throw new IllegalArgumentException("expires must be positive: " + expires);
        }
        if (confirmWithin.compareTo(expires) < 0) {
            throw new IllegalArgumentException("confirmWithin must not be shorter than expires: " + confirmWithin);
        }
        if (done.equals(refused)) {
            throw new IllegalArgumentException("done and refused must be two conditions: " + done);
        }
    }

    /** With what goes without saying. */
    public static Terms usual(Way way, String through) {
        return new Terms(
                way, through, POINT, DONE, REFUSED, EXPIRES, EXPIRES.plus(Duration.ofMinutes(1)), Optional.empty());
    }

    /** All of it in one line: what the owner consents to. Another line is another thing to consent to. */
    public String words() {
        return way.word() + " " + through + ", confirmed by " + point + "/" + done + ", refused by " + point + "/"
                + refused + ", expires " + expires + ", confirmWithin " + confirmWithin
                + lastCall.map(left -> ", lastCall " + left).orElse("");
    }
}
