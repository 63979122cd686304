package yardlight.channels.http;

import java.util.Optional;
import yardlight.channels.web.Reply;

/** Where in an answer the provider says what it calls the message. */
public sealed interface Whereabouts {

    int LONGEST = 200;

    Optional<String> find(Reply.Answer answer);

    /** Empty unless it may be kept as a name: 1 to 200 characters, none of them a control character. */
    default Optional<String> in(Reply.Answer answer) {
        return find(answer)
                .filter(name -> !name.isBlank() && name.length() <= LONGEST)
                .filter(name -> name.chars().noneMatch(Character::isISOControl));
    }

    /** RFC 6901. */
    record AtPointer(String pointer) implements Whereabouts {

        public AtPointer {
            Json.check("reference-pointer", pointer);
        }

        @Override
        public Optional<String> find(Reply.Answer answer) {
            return Json.at(answer, pointer);
        }
    }

    /** In a header. */
    record InHeader(String header) implements Whereabouts {

        public InHeader {
            HeaderNames.check("reference-header", header);
        }

        @Override
        public Optional<String> find(Reply.Answer answer) {
            return answer.headers().firstValue(header);
        }
    }
}
