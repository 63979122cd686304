package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.setup.Language.EN;
import static yardlight.escalation.setup.Language.ES;
import static yardlight.escalation.wording.Made.BEGAN;
import static yardlight.escalation.wording.Made.code;
import static yardlight.escalation.wording.Made.tank;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.setup.Language;

/** Since when, until when and how often, to the letter. */
class TimeWordingTest {

    private static final Optional<Instant> RETURNED = Optional.of(BEGAN.plus(Duration.ofMinutes(7)));

    private static String text(Subject subject, Answering answering, Language language) {
        return Wording.text(List.of(subject), answering, language);
    }

    private static String english(Subject subject) {
        return text(subject, code(47), EN);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25T06:00:00Z, 12:00 AM",
        "2026-11-25T06:59:59Z, 12:59 AM",
        "2026-11-25T07:05:00Z, 1:05 AM",
        "2026-11-25T17:59:00Z, 11:59 AM",
        "2026-11-25T18:00:00Z, 12:00 PM",
        "2026-11-26T05:59:00Z, 11:59 PM",
        "2026-07-01T07:13:00Z, 2:13 AM"
    })
    void tells_the_time_on_the_clock_of_the_site(Instant began, String said) {
        Subject subject = tank(alarm -> alarm.occurredAt(Optional.of(began)));

        assertThat(english(subject)).isEqualTo("MESA 9 WATER TANK HIGH-HIGH " + said + ". Reply OK 47");
        assertThat(text(subject, code(47), ES)).contains(" " + said + ". ");
    }

    @Test
    void falls_back_to_the_time_of_arrival_and_then_to_none() {
        Subject arrived = tank(alarm -> alarm.occurredAt(Optional.empty()).receivedAt(Optional.of(BEGAN)));
        Subject timeless = tank(alarm -> alarm.occurredAt(Optional.empty()));

        assertThat(english(arrived)).isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:13 AM. Reply OK 47");
        assertThat(english(timeless)).isEqualTo("MESA 9 WATER TANK HIGH-HIGH. Reply OK 47");
    }

    @Test
    void says_when_it_is_over() {
        Subject subject =
                tank(alarm -> alarm.state(AlarmState.RETURNED_UNACKNOWLEDGED).returnedAt(RETURNED));

        assertThat(english(subject)).isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:13 AM, returned 2:20 AM. Reply OK 47");
        assertThat(text(subject, code(47), ES))
                .isEqualTo("MESA 9 WATER TANK ALTO-ALTO 2:13 AM, normal desde 2:20 AM. Responda OK 47");
    }

    @Test
    void says_that_it_is_over_when_nobody_knows_since_when() {
        Subject subject = tank(alarm -> alarm.state(AlarmState.RETURNED_UNACKNOWLEDGED));

        assertThat(english(subject)).isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:13 AM, returned. Reply OK 47");
        assertThat(text(subject, code(47), ES)).endsWith(" 2:13 AM, normal. Responda OK 47");
    }

    @Test
    void says_that_a_latched_alarm_wants_a_reset() {
        for (AlarmState state : List.of(AlarmState.LATCHED_UNACKNOWLEDGED, AlarmState.LATCHED_ACKNOWLEDGED)) {
            Subject subject = tank(alarm -> alarm.state(state).returnedAt(RETURNED));

            assertThat(english(subject)).endsWith(" 2:13 AM, returned 2:20 AM, needs reset. Reply OK 47");
            assertThat(text(subject, code(47), ES))
                    .endsWith(" 2:13 AM, normal desde 2:20 AM, falta restablecer. Responda OK 47");
        }
    }

    @Test
    void says_how_often_from_three_repeats_on() {
        assertThat(english(tank(alarm -> alarm.repeats(2)))).endsWith("HIGH-HIGH 2:13 AM. Reply OK 47");
        assertThat(english(tank(alarm -> alarm.repeats(3)))).endsWith(" 2:13 AM, 4 times. Reply OK 47");
        assertThat(text(tank(alarm -> alarm.repeats(4)), code(47), ES)).endsWith(" 2:13 AM, 5 veces. Responda OK 47");
    }
}
