package yardlight.channels.http;

import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import yardlight.channels.Attempt;
import yardlight.channels.http.HttpSettings.Reading;
import yardlight.channels.web.Meaning;
import yardlight.channels.web.Reply;

/**
 * What an answer means for a message. RFC 9110 15: the hundreds of a status code decide, with these rules before them.
 *
 * <p>What is between us and the provider is never held against the line: who we are (401, 402, 403, 407), where and how we
 * ask (404, 405, 410, 415, 426, a redirect), and its own trouble (5xx). 408, 425 and 429 say "later" by their meaning; so
 * does 409 where the provider is told the message's id: the one before is still in hand
 * (draft-ietf-httpapi-idempotency-key-header 2.7). Whatever else is 4xx is about this message.
 *
 * @param again whether the provider can tell that a message is the same again
 * @param redacted takes the secret out of the provider's words
 */
record Verdict(Reading reading, boolean again, UnaryOperator<String> redacted) {

    private static final Set<Integer> OURS = Set.of(401, 402, 403, 404, 405, 407, 410, 415, 426);
    private static final Set<Integer> LATER = Set.of(408, 425, 429);
    private static final int CONFLICT = 409;
    private static final int NOT_IMPLEMENTED = 501;

    Attempt of(Reply reply) {
        if (reply instanceof Reply.Answer answer) {
            return of(answer);
        }
        var silence = (Reply.Silence) reply;
        return Meaning.of(silence, redacted.apply(silence.why()));
    }

    /** Whether nobody is there who would take a message: empty if somebody is, else why not. */
    Optional<String> ofKnock(Reply reply, boolean plainly) {
        if (reply instanceof Reply.Answer answer) {
            int status = answer.status();
            boolean there = plainly
                    ? status / 100 == 2
                    : status < 500 && status != 401 && status != 403 && status != 429 || status == NOT_IMPLEMENTED;
            return there
                    ? Optional.empty()
                    : Optional.of(Attempt.deferred(words(answer)).detail());
        }
        return Optional.of(redacted.apply(((Reply.Silence) reply).why()));
    }

    private Attempt of(Reply.Answer answer) {
        int status = answer.status();
        return switch (status / 100) {
            case 2 -> success(answer);
            case 3 -> Meaning.redirected(words(answer));
            case 4 -> negative(answer);
            case 5 -> Meaning.later(answer, words(answer)).forEveryMessage();
            default -> Meaning.nothing(words(answer));
        };
    }

    private Attempt negative(Reply.Answer answer) {
        int status = answer.status();
        if (LATER.contains(status) || reading.passing().contains(status) || status == CONFLICT && again) {
            return Meaning.later(answer, words(answer));
        }
        return OURS.contains(status)
                ? Meaning.later(answer, words(answer)).forEveryMessage()
                : Attempt.refused(words(answer));
    }

    private Attempt success(Reply.Answer answer) {
        if (!reading.success().isEmpty() && !reading.success().contains(answer.status())) {
            return Attempt.unknown("not the answer that means taken: " + words(answer));
        }
        Sign.Said said = reading.taken().map(sign -> sign.in(answer)).orElse(Sign.Said.TAKEN);
        return switch (said) {
            case TAKEN -> accepted(answer);
            case REFUSED -> Attempt.refused(words(answer));
            case NOT_TAKEN ->
                answer.whole()
                        ? Attempt.deferred(words(answer))
                        : Attempt.unknown("only a part of the answer came: " + words(answer));
            case NOTHING -> Attempt.unknown("the answer does not say whether it was taken: " + words(answer));
        };
    }

    private Attempt accepted(Reply.Answer answer) {
        return reading.reference()
                .flatMap(where -> where.in(answer))
                .map(name -> Attempt.accepted(words(answer), name))
                .orElseGet(() -> Attempt.accepted(words(answer)));
    }

    private String words(Reply.Answer answer) {
        return (answer.status() + " " + redacted.apply(answer.text())).strip();
    }
}
