package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.setup.Language.EN;
import static yardlight.escalation.setup.Language.ES;
import static yardlight.escalation.wording.Made.code;
import static yardlight.escalation.wording.Made.link;
import static yardlight.escalation.wording.Made.measured;
import static yardlight.escalation.wording.Made.point;
import static yardlight.escalation.wording.Made.site;
import static yardlight.escalation.wording.Made.subject;
import static yardlight.escalation.wording.Made.tank;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.alarm.AlarmState;

/** What goes first when a text about one alarm does not fit. */
class WhatIsLeftOutTest {

    private static String address(int length) {
        return "http://" + "h".repeat(length - 7);
    }

    private static String text(Subject subject, Answering answering) {
        String text = Wording.text(List.of(subject), answering, EN);
        assertThat(Gsm7.septets(text)).isLessThanOrEqualTo(160);
        return text;
    }

    private static Subject measuredTank() {
        return tank(alarm -> alarm.repeats(4).measured(measured("18.4", "18.0", "ft")));
    }

    @Test
    void the_text_may_be_exactly_full() {
        // "MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM, 5 times. Reply OK 47 or " has 82.
        String text = text(measuredTank(), link(47, address(78)));

        assertThat(text).endsWith(" 2:13 AM, 5 times. Reply OK 47 or " + address(78));
        assertThat(Gsm7.septets(text)).isEqualTo(160);
    }

    @Test
    void first_the_count_then_the_limit_then_the_value_then_the_link() {
        assertThat(text(measuredTank(), link(47, address(87))))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. Reply OK 47 or " + address(87));
        assertThat(text(measuredTank(), link(47, address(100))))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 18.4 ft 2:13 AM. Reply OK 47 or " + address(100));
        assertThat(text(measuredTank(), link(47, address(108))))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:13 AM. Reply OK 47 or " + address(108));
        assertThat(text(measuredTank(), link(47, address(109))))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM, 5 times. Reply OK 47");
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://host/a b", "http://host/\u00F1", "http://host/a|b", "http://host/\n", ""})
    void a_link_that_would_not_arrive_letter_by_letter(String link) {
        assertThat(text(tank(alarm -> alarm), link(47, link)))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:13 AM. Reply OK 47");
    }

    @Test
    void never_that_it_is_over() {
        Subject subject = tank(alarm -> alarm.state(AlarmState.RETURNED_UNACKNOWLEDGED)
                .repeats(4)
                .measured(measured("18.4", "18.0", "ft"))
                .returnedAt(alarm.done().occurredAt()));

        assertThat(text(subject, link(47, address(90))))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:13 AM, returned 2:13 AM. Reply OK 47 or " + address(90));
    }

    @Test
    void the_last_words_of_long_names() {
        Subject subject = subject(
                site("North Mesa salt water disposal facility number nine of the old Rincon unit"),
                point("Water tank beside the second separator behind the shed at the creek"),
                "high-high",
                alarm -> alarm.measured(measured("18.4", "18.0", "ft")));

        assertThat(text(subject, code(47)))
                .isEqualTo("NORTH MESA SALT WATER DISPOSAL FACILITY NUMBER NINE"
                        + " WATER TANK BESIDE THE SECOND SEPARATOR BEHIND THE SHED"
                        + " HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. Reply OK 47");
    }

    @Test
    void the_end_of_a_single_word_that_is_too_long() {
        assertThat(text(subject("W".repeat(200), "WATER TANK", "high-high"), code(47)))
                .isEqualTo("W".repeat(118) + " WATER TANK HIGH-HIGH 2:13 AM. Reply OK 47");
    }

    @Test
    void but_a_short_phrase_may_fill_the_place_of_a_longer_one() {
        assertThat(text(measuredTank(), link(47, address(88))))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 18.4 ft 2:13 AM, 5 times. Reply OK 47 or " + address(88));
    }

    @Test
    void no_name_of_thirty_septets_whatever_else_there_is_to_say() {
        String site = "SITE NAME OF THIRTY CHARACTERS";
        String point = "POINT NAME OF 30 CHARACTERS OK";
        Subject subject = subject(
                site(site),
                point(point),
                "x".repeat(64),
                alarm -> alarm.repeats(4)
                        .state(AlarmState.LATCHED_UNACKNOWLEDGED)
                        .measured(measured("18.4", "18.0", "ft")));

        String text = Wording.text(List.of(subject), link(Integer.MAX_VALUE, address(40)), ES);

        assertThat(text)
                .isEqualTo(site + " " + point + " " + "X".repeat(64) + " 2:13 AM. Responda OK 2147483647")
                .hasSize(158);
    }
}
