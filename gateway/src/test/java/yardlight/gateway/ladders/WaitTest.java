package yardlight.gateway.ladders;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WaitTest {

    @ParameterizedTest
    @CsvSource({
        "PT5M, 5",
        "PT1S, 0:01",
        "PT90S, 1:30",
        "PT2H, 120",
        "P1D, 1440",
        "PT0.5S, PT0.5S",
        "-PT5M, -PT5M",
        "5, 5"
    })
    void is_shown_in_minutes(String iso, String shown) {
        assertThat(Wait.shown(iso)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"5, PT5M", "' 5 ', PT5M", "1:30, PT1M30S", "120, PT2H", "0, PT0S"})
    void is_read_in_minutes(String typed, String iso) {
        assertThat(Wait.read(typed)).isEqualTo(iso);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "soon", "1:75", "-5", "5 minutes", "PT5M"})
    void is_left_for_the_reader_of_the_setup_when_it_is_something_else(String typed) {
        assertThat(Wait.read(typed)).isEqualTo(typed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PT5M", "PT1S", "PT1M30S", "PT2H", "PT24H"})
    void comes_back_as_it_was(String iso) {
        assertThat(Wait.read(Wait.shown(iso))).isEqualTo(iso);
    }
}
