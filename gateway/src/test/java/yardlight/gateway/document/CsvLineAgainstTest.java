package yardlight.gateway.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells against ASVS 5.0 1.2.10 (read), OWASP CSV Injection and RFC 4180 2.6, 2.7 (read second hand). */
class CsvLineAgainstTest {

    static List<String> formulas() {
        return List.of("=1+1", "+cmd", "-cmd", "@SUM(A1)", "\tcmd", "\rcmd", "\0cmd");
    }

    @ParameterizedTest
    @MethodSource("formulas")
    void a_text_that_begins_like_a_formula_gets_a_quote_in_front(String text) {
        assertThat(CsvLine.cell(text)).contains("'" + text);
    }

    /** Derived: a reading below zero is a number and no formula. */
    @ParameterizedTest
    @ValueSource(strings = {"-12.5", "-97", "18.0", "0"})
    void a_number_is_left_alone(String number) {
        assertThat(CsvLine.cell(number)).isEqualTo(number);
    }

    @Test
    void what_only_begins_like_a_number_is_a_text() {
        assertThat(CsvLine.cell("-12.5+cmd")).isEqualTo("'-12.5+cmd");
    }

    @Test
    void commas_quotes_and_line_ends_are_quoted() {
        assertThat(CsvLine.line(List.of("a,b", "say \"ok\"", "two\r\nlines", "plain")))
                .isEqualTo("\"a,b\",\"say \"\"ok\"\"\",\"two\r\nlines\",plain\r\n");
    }
}
