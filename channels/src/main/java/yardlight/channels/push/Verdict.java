package yardlight.channels.push;

import java.util.Set;
import yardlight.channels.Attempt;
import yardlight.channels.web.Reply;
import yardlight.channels.web.RetryAfter;

/**
 * What a push service's answer means for a message.
 *
 * <p>404 and 410: the subscription is over (RFC 8030 7.3, 8). 403: it was made for another key than ours (RFC 8292 4.2);
 * that is for its owner to put right, by subscribing anew. 413 and other complaints are about this message. 401 is about
 * us, 5xx about the service.
 */
final class Verdict {

    private static final int NO_LOGIN = 401;
    private static final Set<Integer> LATER = Set.of(408, 425, 429);
    private static final Set<Integer> GONE = Set.of(404, 410);
    private static final int OTHER_KEY = 403;

    private Verdict() {}

    static Attempt of(Reply reply) {
        if (reply instanceof Reply.Silence silence) {
            Attempt attempt = silence.sent()
                    ? Attempt.unknown("sent, but not confirmed: " + silence.why())
                    : Attempt.deferred(silence.why());
            return attempt.forEveryMessage();
        }
        var answer = (Reply.Answer) reply;
        return switch (answer.status() / 100) {
            case 2 -> Attempt.accepted(words(answer));
            case 3 ->
                Attempt.deferred("a redirect, which is not followed: " + words(answer))
                        .forEveryMessage();
            case 4 -> negative(answer);
            case 5 -> deferred(answer).forEveryMessage();
            default ->
                Attempt.unknown("no answer that means anything: " + words(answer))
                        .forEveryMessage();
        };
    }

    private static Attempt negative(Reply.Answer answer) {
        int status = answer.status();
        if (LATER.contains(status)) {
            return deferred(answer);
        }
        if (status == NO_LOGIN) {
            return deferred(answer).forEveryMessage();
        }
        if (GONE.contains(status)) {
            return Attempt.refused("the subscription is over: " + words(answer));
        }
        return Attempt.refused(
                status == OTHER_KEY ? "the subscription was made for another key: " + words(answer) : words(answer));
    }

    private static Attempt deferred(Reply.Answer answer) {
        return RetryAfter.in(answer.headers())
                .map(asked -> Attempt.deferred(words(answer), asked))
                .orElseGet(() -> Attempt.deferred(words(answer)));
    }

    static String words(Reply.Answer answer) {
        return (answer.status() + " " + answer.text()).strip();
    }
}
