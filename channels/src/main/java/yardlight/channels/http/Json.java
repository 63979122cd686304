package yardlight.channels.http;

import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yardlight.channels.web.Reply;

/** Looks things up in JSON. */
final class Json {

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private Json() {}

    /** A text, a number, or {@code true} and the like, as it would be written; empty for anything else. */
    static Optional<String> at(Reply.Answer answer, String pointer) {
        if (!answer.whole()) {
            return Optional.empty();
        }
        try {
            JsonNode found = MAPPER.readTree(answer.text()).at(JsonPointer.compile(pointer));
            return found.isValueNode() && !found.isNull() ? Optional.of(found.asString()) : Optional.empty();
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }

    /** @param property in which the pointer stands */
    static void check(String property, String pointer) {
        try {
            JsonPointer.compile(pointer);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    property + " must be a JSON pointer, such as /messages/0/id: " + pointer, e);
        }
    }
}
