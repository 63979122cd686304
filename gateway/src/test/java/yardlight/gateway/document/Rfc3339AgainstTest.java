package yardlight.gateway.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Times against the examples of RFC 3339 5.8: the text from memory, the instants recomputed. */
class Rfc3339AgainstTest {

    @ParameterizedTest
    @CsvSource({
        "1985-04-12T23:20:50.52Z, 1985-04-12T23:20:50.520Z",
        "1996-12-19T16:39:57-08:00, 1996-12-20T00:39:57Z",
        "1937-01-01T12:00:27.87+00:20, 1937-01-01T11:40:27.870Z",
        "1990-12-31T15:59:60-08:00, 1990-12-31T23:59:59Z",
        "1990-12-31T23:59:60Z, 1990-12-31T23:59:59Z"
    })
    void reads_the_examples(String written, String instant) {
        assertThat(Rfc3339.instant(written)).hasToString("Optional[" + instant + "]");
    }

    /** RFC 3339 5.6 allows lower case, and 4.3 the unknown offset: from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"1985-04-12t23:20:50z", "1985-04-12T23:20:50-00:00", "1985-04-12T23:20:50.123456789Z"})
    void reads_what_the_grammar_allows(String written) {
        assertThat(Rfc3339.instant(written)).isPresent();
    }

    /** Some of these the JDK would take; the grammar of RFC 3339 5.6 does not: from memory. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "1985-04-12",
                "1985-04-12T23:20Z",
                "1985-04-12T23:20:50",
                "1985-04-12T24:00:00Z",
                "1985-04-12T23:60:00Z",
                "1985-02-30T00:00:00Z",
                "1985-04-12T23:20:50+0800",
                "+01985-04-12T23:20:50Z",
                "1985-04-12T23:20:50.Z",
                "1985-04-12 23:20:50Z"
            })
    void refuses_the_rest(String written) {
        assertThat(Rfc3339.instant(written)).isEmpty();
    }

    @Test
    void is_not_led_astray_by_digits_of_other_scripts() {
        assertThat(Rfc3339.instant("\u0661985-04-12T23:20:50Z")).isEmpty();
    }
}
