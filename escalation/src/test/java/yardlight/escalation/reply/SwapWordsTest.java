package yardlight.escalation.reply;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.swap.SwapDay;

/** A swap is asked for by a word of its own, and answered by yes or no and the number. */
class SwapWordsTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SWAP FRI",
                "swap friday",
                "Swap my Friday please",
                "swap Fri.",
                "please swap fri",
                "Cambio vie",
                "CAMBIO VIERNES",
                "cambiar mi viernes por favor",
                "cambio el viernes"
            })
    void a_day_of_the_week(String text) {
        assertThat(ReplyReader.read(text)).isEqualTo(swap(SwapDay.weekday(DayOfWeek.FRIDAY, false)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "swap fri night",
                "swap my friday night",
                "cambio viernes noche",
                "cambio mi viernes en la noche",
                "cambio viernes por la noche"
            })
    void the_night_that_begins_on_it(String text) {
        assertThat(ReplyReader.read(text)).isEqualTo(swap(SwapDay.weekday(DayOfWeek.FRIDAY, true)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "swap Nov 27",
                "swap november 27th",
                "swap 27 nov",
                "cambio 27 nov",
                "cambio 27 de noviembre",
                "cambio el 27 de nov"
            })
    void a_date(String text) {
        assertThat(ReplyReader.read(text)).isEqualTo(swap(SwapDay.date(MonthDay.of(11, 27), false)));
    }

    @Test
    void what_is_near() {
        assertThat(ReplyReader.read("swap tonight")).isEqualTo(swap(SwapDay.near(SwapDay.Kind.TODAY, true)));
        assertThat(ReplyReader.read("cambio esta noche")).isEqualTo(swap(SwapDay.near(SwapDay.Kind.TODAY, true)));
        assertThat(ReplyReader.read("Cambio hoy")).isEqualTo(swap(SwapDay.near(SwapDay.Kind.TODAY, false)));
        assertThat(ReplyReader.read("cambio mañana")).isEqualTo(swap(SwapDay.near(SwapDay.Kind.TOMORROW, false)));
        assertThat(ReplyReader.read("swap tomorrow night")).isEqualTo(swap(SwapDay.near(SwapDay.Kind.TOMORROW, true)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"swap", "SWAP my turn", "swap 11/27", "swap 5/6", "swap feb 30", "swap whenever"})
    void a_day_that_is_not_known_is_asked_for(String text) {
        assertThat(ReplyReader.read(text)).isIn(new Said.Swap(Optional.empty()), new Said.Unclear());
        assertThat(ReplyReader.read("swap")).isEqualTo(new Said.Swap(Optional.empty()));
    }

    /** On a radio this is "over"; and who talks about a swap does not ask for one. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "cambio",
                "cambio y fuera",
                "ben can swap with me friday",
                "did you swap friday?",
                "no swap fri",
                "swap fri or sat",
                "swap out the pump fri",
                "no puedo el viernes"
            })
    void talk_asks_for_nothing(String text) {
        assertThat(ReplyReader.read(text)).isNotInstanceOf(Said.Swap.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"YES 31", "yes 31", "Yes, 31", "SI 31", "Sí 31", "ok 31", "yes31"})
    void yes_with_the_number_is_the_same_as_ok_with_it(String text) {
        assertThat(ReplyReader.read(text)).isEqualTo(new Said.Ok(List.of(31)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"NO 31", "no 31", "No, 31", "No thanks 31", "no gracias 31", "no 31, sorry", "No 31 lo siento"})
    void no_with_the_number(String text) {
        assertThat(ReplyReader.read(text)).isEqualTo(new Said.No(31));
    }

    @ParameterizedTest
    @ValueSource(strings = {"no", "no way", "not 31", "no 31 or 32", "no ok 31", "no es 31", "nope 31"})
    void anything_else_is_no_no(String text) {
        assertThat(ReplyReader.read(text)).isEqualTo(new Said.Unclear());
    }

    private static Said swap(SwapDay day) {
        return new Said.Swap(Optional.of(day));
    }
}
