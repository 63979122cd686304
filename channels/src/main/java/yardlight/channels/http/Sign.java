package yardlight.channels.http;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import yardlight.channels.web.Reply;

/** What a body says about a message, where the status code does not say it all. */
public sealed interface Sign {

    /** What it says. */
    enum Said {
        TAKEN,
        /** Never, with this address or this text. */
        REFUSED,
        /** Something else. */
        NOT_TAKEN,
        /** Nothing that can be read. */
        NOTHING
    }

    Said in(Reply.Answer answer);

    /**
     * A value in a JSON body.
     *
     * @param pointer RFC 6901
     * @param refused values that mean "never"; may be empty
     */
    record Value(String pointer, Set<String> taken, Set<String> refused) implements Sign {

        public Value {
            Json.check("taken-pointer", pointer);
            taken = Set.copyOf(taken);
            refused = Set.copyOf(refused);
            if (taken.isEmpty()) {
                throw new IllegalArgumentException("taken-values must have one at least, for taken-pointer is set");
            }
        }

        @Override
        public Said in(Reply.Answer answer) {
            Optional<String> value = Json.at(answer, pointer);
            if (value.isEmpty()) {
                return Said.NOTHING;
            }
            if (taken.contains(value.get())) {
                return Said.TAKEN;
            }
            return refused.contains(value.get()) ? Said.REFUSED : Said.NOT_TAKEN;
        }
    }

    /** Words somewhere in the body. */
    record Words(Pattern taken, Optional<Pattern> refused) implements Sign {

        @Override
        public Said in(Reply.Answer answer) {
            String text = answer.text();
            if (taken.matcher(text).find()) {
                return Said.TAKEN;
            }
            return refused.filter(never -> never.matcher(text).find()).isPresent() ? Said.REFUSED : Said.NOT_TAKEN;
        }
    }
}
