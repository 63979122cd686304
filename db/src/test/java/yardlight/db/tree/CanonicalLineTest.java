package yardlight.db.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.Test;

/** The form that is hashed is that of RFC 8785: told by its example, and by a library that is not ours. */
class CanonicalLineTest {

    private static final Instant AT = Instant.parse("2026-11-25T08:13:00.000001Z");

    @Test
    void writes_a_line_as_json_in_order() {
        assertThat(CanonicalLine.text(7, AT, "alarm", Map.of("site", "mesa-9", "alarm", "a/1"), "occurred"))
                .isEqualTo("{\"about\":{\"alarm\":\"a/1\",\"site\":\"mesa-9\"},\"at\":\"2026-11-25T08:13:00.000001Z\","
                        + "\"line\":7,\"what\":\"alarm\",\"words\":\"occurred\"}");
    }

    /** RFC 8785, 3.2.2: the text of its example. */
    @Test
    void escapes_as_the_example_of_the_standard() {
        assertThat(words("\u20ac$\u000F\nA'B\"\\\\\"/")).contains("\"words\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"");
    }

    /** RFC 8785, 3.2.3: names in the order of their UTF-16 code units, an emoji before U+FB33. */
    @Test
    void sorts_names_as_the_standard_does() {
        var about = new LinkedHashMap<String, String>();
        for (String name : new String[] {"\u20ac", "\r", "\ufb33", "1", "\ud83d\ude02", "\u0080", "\u00f6", "\n"}) {
            about.put(name, "x");
        }

        assertThat(CanonicalLine.text(1, AT, "what", about, ""))
                .startsWith("{\"about\":{\"\\n\":\"x\",\"\\r\":\"x\",\"1\":\"x\",\"\u0080\":\"x\",\"\u00f6\":\"x\","
                        + "\"\u20ac\":\"x\",\"\ud83d\ude02\":\"x\",\"\ufb33\":\"x\"}");
    }

    @Test
    void cuts_times_as_the_databases_do() {
        assertThat(CanonicalLine.text(1, AT.plusNanos(999), "what", Map.of(), ""))
                .contains("\"at\":\"2026-11-25T08:13:00.000001Z\"");
    }

    /** Lines of any characters come back unchanged from the reference library, java-json-canonicalization. */
    @Test
    void is_canonical_for_a_library_that_is_not_ours() throws IOException {
        var random = new Random(1);
        for (int i = 0; i < 20_000; i++) {
            String line = CanonicalLine.text(
                    random.nextInt(1_000_000),
                    AT.plusMillis(random.nextInt()),
                    any(random),
                    Map.of(any(random), any(random), "site", any(random)),
                    any(random));

            assertThat(new JsonCanonicalizer(line).getEncodedString()).isEqualTo(line);
        }
    }

    private static String words(String words) {
        return CanonicalLine.text(1, AT, "what", Map.of(), words);
    }

    private static String any(Random random) {
        var text = new StringBuilder();
        for (int i = random.nextInt(12); i >= 0; i--) {
            int one = random.nextInt(random.nextBoolean() ? 0x80 : 0x11000);
            text.appendCodePoint(one >= 0xd800 && one <= 0xdfff ? 'x' : one);
        }
        return text.toString();
    }
}
