package yardlight.channels;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What came of one try to hand a message over.
 *
 * @param detail why, in the other side's own words where there are any; made to be one line of at most 300 characters
 *     without control characters
 * @param general whether every message would have fared like this one now: it is between us and the carrier, and says
 *     nothing of the line
 * @param retryAfter how long the other side asked to be left alone; only with {@link Outcome#DEFERRED}
 * @param reference what the other side calls the message from now on, if it will say later what became of it; only with
 *     {@link Outcome#ACCEPTED}
 */
public record Attempt(
        Outcome outcome, String detail, boolean general, Optional<Duration> retryAfter, Optional<String> reference) {

    /** How it ended. */
    public enum Outcome {
        /** The other side has taken it over. It need not have been read, nor even reached the person. */
        ACCEPTED,
        /** This line does not take it, and trying again will not change that. */
        REFUSED,
        /** Not handed over for now: the line may be fine, and the message must wait. */
        DEFERRED,
        /** It was sent but the answer did not arrive: the other side may or may not have taken it. */
        UNKNOWN;

        /** As the log says it, such as {@code deferred}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public static final int LONGEST_DETAIL = 300;

    private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}\\p{Cc}]+");
    private static final Pattern INVISIBLE = Pattern.compile("[\\p{Cf}\\p{Cs}\\p{Cn}]");

    public Attempt {
        detail = oneLine(detail);
        if (retryAfter.isPresent() && outcome != Outcome.DEFERRED) {
            throw new IllegalArgumentException("only a deferred attempt has a time to wait: " + outcome);
        }
        if (general && (outcome == Outcome.ACCEPTED || outcome == Outcome.REFUSED)) {
            throw new IllegalArgumentException(
                    "only what is not settled can be between us and the carrier: " + outcome);
        }
        if (reference.isPresent() && outcome != Outcome.ACCEPTED) {
            throw new IllegalArgumentException("only what was accepted has a reference: " + outcome);
        }
        if (retryAfter.isPresent() && retryAfter.get().isNegative()) {
            throw new IllegalArgumentException("time to wait must not be negative: " + retryAfter.get());
        }
    }

    public static Attempt accepted(String detail) {
        return new Attempt(Outcome.ACCEPTED, detail, false, Optional.empty(), Optional.empty());
    }

    /** With the name under which the other side will say what became of it. */
    public static Attempt accepted(String detail, String reference) {
        return new Attempt(Outcome.ACCEPTED, detail, false, Optional.empty(), Optional.of(reference));
    }

    public static Attempt refused(String detail) {
        return new Attempt(Outcome.REFUSED, detail, false, Optional.empty(), Optional.empty());
    }

    public static Attempt deferred(String detail) {
        return new Attempt(Outcome.DEFERRED, detail, false, Optional.empty(), Optional.empty());
    }

    public static Attempt deferred(String detail, Duration retryAfter) {
        return new Attempt(Outcome.DEFERRED, detail, false, Optional.of(retryAfter), Optional.empty());
    }

    public static Attempt unknown(String detail) {
        return new Attempt(Outcome.UNKNOWN, detail, false, Optional.empty(), Optional.empty());
    }

    /** The same attempt, of which it is known that every message would have fared like it. */
    public Attempt forEveryMessage() {
        return new Attempt(outcome, detail, true, retryAfter, reference);
    }

    static String oneLine(String words) {
        String bounded = words.length() > 4_000 ? words.substring(0, 4_000) : words;
        String line = INVISIBLE
                .matcher(BLANKS.matcher(bounded).replaceAll(" "))
                .replaceAll("")
                .strip();
        if (line.length() <= LONGEST_DETAIL) {
            return line;
        }
        int end = LONGEST_DETAIL - 1;
        return line.substring(0, Character.isHighSurrogate(line.charAt(end - 1)) ? end - 1 : end) + "…";
    }
}
