package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TransliterationTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "150 °F;150 F",
                "150°F;150 F",
                "\u2103;C",
                "a–b—c−d‑e;a-b-c-d-e",
                "‘a’ “b” «c»;'a' \"b\" \"c\"",
                "wait…;wait...",
                "5 \u00B5m, 5 \u03BCm;5 um, 5 um",
                "m² m³;m2 m3",
                "5½ in;5 1/2 in",
                "límite, corazón, aún, está;limite, corazon, aun, esta",
                "Peña, señal, ¿qué?, über;Peña, señal, ¿qué?, über",
                "garçon, Łódź, Straße, sœur;garcon, Lodz, Straße, soeur",
                "Ærø Þór;Ærø THor",
                "a|b;a/b",
                "ΑΘΗΝΑ, Αθήνα;AΘHNA, AΘHNA",
                "\u0664\u0667;47",
                "ﬁeld №\u00A07;field No 7",
            })
    void writes_what_has_a_likeness(String text, String written) {
        assertThat(Transliteration.gsm(text)).isEqualTo(written);
    }

    @Test
    void keeps_an_accent_that_the_alphabet_has_even_when_it_comes_apart() {
        assertThat(Transliteration.gsm("e\u0301 n\u0303 a\u0301")).isEqualTo("é ñ a");
    }

    @Test
    void puts_a_question_mark_for_a_letter_and_a_space_for_anything_else_that_it_does_not_know() {
        assertThat(Transliteration.gsm("TANK \u6C34 7")).isEqualTo("TANK ? 7");
        assertThat(Transliteration.gsm("TANK\uD83D\uDCA17")).isEqualTo("TANK 7");
        assertThat(Transliteration.gsm("Жar")).isEqualTo("?ar");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a\r\nb",
                "a\tb",
                "a\u0000b",
                "a\u001Bb",
                "a\fb",
                "a\u2028b",
                "a\u00A0\u2003b",
                " a  b ",
                "a\uD800b"
            })
    void makes_one_line_with_single_spaces(String text) {
        assertThat(Transliteration.gsm(text)).isEqualTo("a b");
    }

    @Test
    void drops_joiners_and_direction_marks() {
        assertThat(Transliteration.gsm("ME\u200BS\u202EA\uFEFF")).isEqualTo("MESA");
    }

    @Test
    void leaves_the_alphabet_itself_alone_but_for_the_bar_and_line_breaks() {
        String alphabet = IntStream.rangeClosed(0, 0xFFFF)
                .filter(Gsm7::encodable)
                .filter(character -> character > ' ' && character != '|')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();

        assertThat(Transliteration.gsm(alphabet)).isEqualTo(alphabet).hasSize(137 - 5);
    }

    @Test
    void writes_every_character_there_is() {
        for (int character = 0; character <= Character.MAX_CODE_POINT; character++) {
            String written = Transliteration.gsm(Character.toString(character));

            assertThat(Gsm7.encodable(written)).as("U+%04X", character).isTrue();
            assertThat(written).as("U+%04X", character).doesNotContain("|", "\n", "\r", "\f");
        }
    }

    @Test
    void writes_any_mixture() {
        var random = new Random(17);
        for (int i = 0; i < 20_000; i++) {
            String text = Hostile.text(random, 30);

            assertThat(Gsm7.encodable(Transliteration.gsm(text))).as(text).isTrue();
        }
    }

    @Test
    void knows_whether_a_letter_was_lost() {
        assertThat(Transliteration.keeps("Peña Nº 7, límite?")).isTrue();
        assertThat(Transliteration.keeps("TANK \uD83D\uDCA1")).isTrue();
        assertThat(Transliteration.keeps("TANK Ж?")).isFalse();
    }
}
