package yardlight.escalation.sentence;

import java.util.List;
import java.util.stream.Stream;

/**
 * A sentence for a person.
 *
 * @param code by which another language has it, such as {@code test.quiet}; empty when none has
 * @param english as the API and the log have it
 * @param values what it is about, by the numbers that the other languages give them; times in ISO 8601
 */
public record Sentence(String code, String english, List<String> values) {

    public Sentence {
        values = List.copyOf(values);
    }

    /** One that is said in English everywhere. */
    public static Sentence plain(String english) {
        return new Sentence("", english, List.of());
    }

    public static Sentence of(String code, String english, Object... values) {
        return new Sentence(
                code, english, Stream.of(values).map(Object::toString).toList());
    }
}
