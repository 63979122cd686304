package yardlight.channels.push;

import java.util.Set;
import yardlight.channels.Attempt;
import yardlight.channels.web.Meaning;
import yardlight.channels.web.Reply;

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
            return Meaning.of(silence, silence.why());
        }
        var answer = (Reply.Answer) reply;
        return switch (answer.status() / 100) {
            case 2 -> Attempt.accepted(words(answer));
            case 3 -> Meaning.redirected(words(answer));
            case 4 -> negative(answer);
            case 5 -> Meaning.later(answer, words(answer)).forEveryMessage();
            default -> Meaning.nothing(words(answer));
        };
    }

    private static Attempt negative(Reply.Answer answer) {
        int status = answer.status();
        if (LATER.contains(status)) {
            return Meaning.later(answer, words(answer));
        }
        if (status == NO_LOGIN) {
            return Meaning.later(answer, words(answer)).forEveryMessage();
        }
        if (GONE.contains(status)) {
            return Attempt.refused("the subscription is over: " + words(answer));
        }
        return Attempt.refused(
                status == OTHER_KEY ? "the subscription was made for another key: " + words(answer) : words(answer));
    }

    static String words(Reply.Answer answer) {
        return (answer.status() + " " + answer.text()).strip();
    }
}
