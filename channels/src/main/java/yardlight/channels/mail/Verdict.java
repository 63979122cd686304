package yardlight.channels.mail;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import yardlight.channels.Attempt;

/**
 * What a server's reply, or its silence, means for a message.
 *
 * <p>RFC 5321 4.2.1: the first digit decides. Four rules come before it. What is said before RCPT is between us and the
 * server and never held against the line, so the message waits while the owner is told. A missing login is the same
 * wherever it is said, and so is 421, with which a server closes whatever it was asked (3.8). And 552 at RCPT for too many recipients is transient (4.5.3.1.10).
 */
final class Verdict {

    /** Login wanted, too weak, taken for wrong, or only with TLS: RFC 4954 6. */
    private static final Set<Integer> LOGIN_CODES = Set.of(530, 534, 535, 538);

    private static final int CLOSING = 421;

    private static final Pattern TOO_MANY_RECIPIENTS = Pattern.compile("too many|\\b[45]\\.5\\.3\\b");

    private Verdict() {}

    /** The server answered at this stage, and that was the end of it. */
    static Attempt of(Stage stage, Reply reply) {
        return switch (reply.code() / 100) {
            case 2 -> stage == Stage.SENT ? Attempt.accepted(reply.words()) : onSilence(stage, reply.words());
            case 4 -> Attempt.deferred(prefixed(stage, reply.words()));
            case 5 -> negative(stage, reply);
            default -> onSilence(stage, "unreadable answer: " + reply.words());
        };
    }

    /** No answer, or none that ended it; {@code why} says what happened instead. */
    static Attempt onSilence(Stage stage, String why) {
        if (stage == Stage.SENT) {
            return Attempt.unknown("sent, but not confirmed: " + why);
        }
        return Attempt.deferred(why);
    }

    /** Whether it is between us and the server, so that every message would fare like this one. */
    static boolean isOurs(Stage stage, Optional<Reply> reply) {
        return !stage.concernsLine()
                || reply.map(given -> given.code() == CLOSING || LOGIN_CODES.contains(given.code()))
                        .orElse(true);
    }

    private static Attempt negative(Stage stage, Reply reply) {
        if (!stage.concernsLine() || isTransient(stage, reply)) {
            return Attempt.deferred(prefixed(stage, reply.words()));
        }
        if (LOGIN_CODES.contains(reply.code())) {
            return Attempt.deferred(prefixed(Stage.LOGIN, reply.words()));
        }
        return Attempt.refused(reply.words());
    }

    private static boolean isTransient(Stage stage, Reply reply) {
        return reply.code() == 552
                && stage == Stage.RECIPIENT
                && TOO_MANY_RECIPIENTS
                        .matcher(reply.words().toLowerCase(Locale.ROOT))
                        .find();
    }

    private static String prefixed(Stage stage, String words) {
        return stage.trouble().isEmpty() ? words : stage.trouble() + ": " + words;
    }
}
