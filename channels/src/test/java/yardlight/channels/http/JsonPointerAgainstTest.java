package yardlight.channels.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpHeaders;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.web.Reply.Answer;

/** Against the examples of RFC 6901 section 5 (memory), those that lead to a value. */
class JsonPointerAgainstTest {

    private static final String DOCUMENT = """
            {"foo": ["bar", "baz"], "": 0, "a/b": 1, "c%d": 2, "e^f": 3, "g|h": 4, "i\\\\j": 5, "k\\"l": 6, " ": 7, "m~n": 8}
            """;

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '\'',
            value = {
                "/foo/0, bar",
                "/, 0",
                "/a~1b, 1",
                "/c%d, 2",
                "/e^f, 3",
                "/g|h, 4",
                "/i\\j, 5",
                "/k\"l, 6",
                "'/ ', 7",
                "/m~0n, 8"
            })
    void finds_what_the_RFC_finds(String pointer, String value) {
        var answer = new Answer(
                200, HttpHeaders.of(Map.of(), (n, v) -> true), DOCUMENT.getBytes(StandardCharsets.UTF_8), true);

        assertThat(Json.at(answer, pointer)).contains(value);
    }
}
