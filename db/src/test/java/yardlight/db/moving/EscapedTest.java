package yardlight.db.moving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EscapedTest {

    private static final int TEXTS = 20_000;
    private static final int LONGEST = 12;
    private static final String COMMON = "aN\\u00\t\n\r \u0085\u2028é\ud83d\ude02\u0000";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"a\\b|a\\\\b", "\\N|\\\\N", "\\u0041|\\\\u0041", "plain|plain"})
    void doubles_the_backslash(String text, String written) {
        assertThat(written(text)).isEqualTo(written);
    }

    @Test
    void writes_what_ends_a_line_or_a_cell_by_its_number() {
        assertThat(written("a\tb\r\nc\u0000")).isEqualTo("a\\u0009b\\u000d\\u000ac\\u0000");
        assertThat(written("\ud83d\ude02 and \ud83d alone")).isEqualTo("\ud83d\ude02 and \\ud83d alone");
    }

    /** Texts of all characters, half of a pair alone too, and of those that mean something here. */
    @Test
    void reads_back_any_text_as_it_was_and_needs_no_character_that_utf_8_has_not() {
        var random = new Random(26);
        for (int i = 0; i < TEXTS; i++) {
            var text = new StringBuilder();
            for (int length = random.nextInt(LONGEST); length > 0; length--) {
                text.append(
                        random.nextBoolean()
                                ? COMMON.charAt(random.nextInt(COMMON.length()))
                                : (char) random.nextInt(Character.MAX_VALUE + 1));
            }
            String written = written(text.toString());

            assertThat(Escaped.read(written)).isEqualTo(text.toString());
            assertThat(written).doesNotContain("\t", "\n", "\r", "\u0000").isNotEqualTo(Kind.NONE);
            assertThat(new String(written.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8))
                    .isEqualTo(written);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\", "a\\n", "\\u12", "\\uzzzz", "\\N"})
    void refuses_what_was_not_written_so(String cell) {
        assertThatThrownBy(() -> Escaped.read(cell)).isInstanceOf(IllegalArgumentException.class);
    }

    private static String written(String text) {
        var to = new StringBuilder();
        Escaped.write(text, to);
        return to.toString();
    }
}
