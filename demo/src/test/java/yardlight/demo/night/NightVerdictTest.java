package yardlight.demo.night;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.demo.cast.Cast;
import yardlight.demo.phone.Text;

class NightVerdictTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final Cast CAST = Cast.ofTheDemo();

    private static final Text BENS = text("ben", "02:23:05", "MESA 9 WATER TANK HIGH-HIGH 18.4 ft");

    private final List<Text> texts = new ArrayList<>(List.of(
            text("ana", "02:13:05", "MESA 9 WATER TANK HIGH-HIGH 18.4 ft"),
            text("ana", "02:18:05", "MESA 9 WATER TANK HIGH-HIGH 18.4 ft"),
            BENS,
            text("ana", "02:40:05", "CALICO DRAW FLOAT SWITCH HIGH"),
            text("ana", "03:31:00", "TULE CREEK PUMP STATION BOX SILENT"),
            text("ana", "06:00:03", "LARKSPUR BARN BOX BATTERY LOW 11.4 V. Reply OK 49"),
            text("ana", "02:27:30", "Ben Tso has it since 2:25 AM: MESA 9 WATER TANK HIGH-HIGH"),
            text("ana", "06:00:04", "MESA 9 WATER TANK HIGH-HIGH is back to normal 4:05 AM, after 1 h 52 min."),
            text("ben", "06:00:04", "MESA 9 WATER TANK HIGH-HIGH is back to normal 4:05 AM, after 1 h 52 min.")));
    private Optional<String> by = Optional.of("ben");
    private String answeredAt = "02:25:30";

    @Test
    void has_nothing_against_a_night_as_written() {
        assertThat(reasons()).isEmpty();
    }

    @Test
    void misses_anas_second_text() {
        texts.remove(1);

        assertThat(reasons()).containsExactly("Ana must get 2 texts about the tank, not 1");
    }

    @Test
    void notices_that_ben_was_called_too_soon() {
        texts.set(2, text("ben", "02:18:05", "MESA 9 WATER TANK HIGH-HIGH"));

        assertThat(reasons()).containsExactly("Ben must be called 10 minutes after Ana, not after PT5M");
    }

    @Test
    void notices_a_text_after_the_answer() {
        texts.add(text("ida", "02:28:05", "MESA 9 WATER TANK HIGH-HIGH"));

        assertThat(reasons()).containsExactly("nobody must be called for the tank once Ben has answered");
    }

    @Test
    void notices_that_nobody_pressed_the_button() {
        answeredAt = "";

        assertThat(reasons()).containsExactly("Ben must answer by the link");
    }

    @Test
    void notices_whom_the_gateway_names_instead() {
        by = Optional.of("owner");

        assertThat(reasons()).containsExactly("the tank must be acknowledged by ben, not by owner");
    }

    @Test
    void notices_a_text_that_quiet_hours_should_have_held() {
        texts.set(5, text("ana", "05:59:00", "LARKSPUR BARN BOX BATTERY LOW 11.4 V"));

        assertThat(reasons()).containsExactly("the low battery must wait until quiet hours end");
    }

    @Test
    void notices_a_held_text_that_was_dropped() {
        texts.remove(5);

        assertThat(reasons()).containsExactly("the low battery must make a text in the morning");
    }

    @Test
    void lets_a_call_for_something_else_say_that_the_tank_is_back() {
        texts.remove(7);
        texts.set(
                5,
                text(
                        "ana",
                        "06:00:03",
                        "LARKSPUR BARN BOX BATTERY LOW 11.4 V. Also: MESA 9 WATER TANK HIGH-HIGH normal 4:05 AM"));

        assertThat(reasons()).isEmpty();
    }

    @Test
    void misses_that_ana_hears_who_has_it() {
        texts.remove(6);

        assertThat(reasons()).containsExactly("Ana, and nobody else, must hear once that Ben has the tank");
    }

    @Test
    void misses_that_ben_hears_that_it_is_over() {
        texts.remove(8);

        assertThat(reasons()).containsExactly("Ana and Ben must hear once that the tank is back");
    }

    @Test
    void notices_that_somebody_was_woken_to_hear_that_all_is_well() {
        texts.set(8, text("ben", "04:07:00", "MESA 9 WATER TANK HIGH-HIGH is back to normal 4:05 AM"));

        assertThat(reasons()).containsExactly("nobody must be woken to hear that the tank is back");
    }

    @Test
    void allows_two_texts_for_the_chatter_and_no_third() {
        texts.add(text("ben", "02:41:00", "CALICO DRAW FLOAT SWITCH HIGH"));
        assertThat(reasons()).isEmpty();

        texts.add(text("ben", "02:42:00", "CALICO DRAW FLOAT SWITCH HIGH"));
        assertThat(reasons()).containsExactly("the chattering switch must make 1 or 2 texts, not 3");
    }

    @Test
    void misses_the_box_that_fell_silent() {
        texts.remove(4);

        assertThat(reasons()).containsExactly("the silent box must make a text");
    }

    private List<String> reasons() {
        List<NightRecord.Answer> answers =
                answeredAt.isEmpty() ? List.of() : List.of(new NightRecord.Answer(BENS, at(answeredAt)));
        return NightVerdict.reasons(new NightRecord(texts, answers, by, at("06:00")));
    }

    private static Text text(String person, String time, String body) {
        return new Text(1, CAST.person(person).orElseThrow(), Text.Path.PHONE, at(time), body, "");
    }

    private static Instant at(String time) {
        return NightScript.instant(LocalTime.parse(time), CHICAGO);
    }
}
