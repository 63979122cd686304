package yardlight.gateway.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.RecordedCallout;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.reply.ReplyReader;
import yardlight.escalation.setup.Contact;

/** Ana was told of call 47 and Ben of call 51, and she is asked to take turn 61; somebody says to be Ana. */
class DoubtsTest {

    private static final Contact ANA = Fixtures.theSetup().contacts().get("ana");

    private Instant now = Fixtures.at("2026-11-25T02:30");
    private final Doubts doubts = new Doubts(() -> now);
    private final Waiting calls = Waiting.of(List.of(call(47, "ana"), call(51, "ben")));

    private boolean mayAsk(String text) {
        return doubts.mayAsk(List.of(ANA), ReplyReader.read(text), calls, Set.of(61));
    }

    @ParameterizedTest
    @CsvSource({
        "OK 47,true",
        "HOLD 47 2H,true",
        "STATUS,true",
        "WHO,true",
        "HELP,true",
        "what is it,true",
        "OK,false",
        "ALL,false",
        "OK 51,false",
        "OK 47 51,false",
        "OK 48,false",
        "OK 61,false",
        "OK 47 61,false",
        "HOLD 2H,false",
        "STOP,false"
    })
    void may_ask_only_for_what_harms_nobody_or_shows_the_text(String text, boolean may) {
        assertThat(mayAsk(text)).isEqualTo(may);
    }

    @Test
    void gets_no_further_by_guessing() {
        for (int code = 1; code <= Doubts.MOST_GUESSES; code++) {
            assertThat(mayAsk("OK " + code)).isFalse();
        }

        assertThat(mayAsk("OK 47")).isFalse();
        now = now.plus(Doubts.WITHIN).plus(Duration.ofSeconds(1));
        assertThat(mayAsk("OK 47")).isTrue();
    }

    @Test
    void the_number_of_a_turn_is_refused_but_is_no_guess() {
        for (int i = 0; i < Doubts.MOST_GUESSES; i++) {
            assertThat(mayAsk("YES 61")).isFalse();
        }

        assertThat(mayAsk("OK 47")).isTrue();
    }

    @Test
    void a_guess_beside_the_number_of_a_turn_is_one() {
        for (int i = 0; i < Doubts.MOST_GUESSES; i++) {
            assertThat(mayAsk("OK 61 48")).isFalse();
        }

        assertThat(mayAsk("OK 47")).isFalse();
    }

    private static RecordedAlarm call(int code, String told) {
        var key = Fixtures.TANK;
        var facts = new Callout.Facts(
                key + "." + code,
                code,
                key.site(),
                "night",
                Priority.HIGH,
                List.of(key),
                Fixtures.at("2026-11-25T02:13"),
                1,
                1,
                Set.of(told),
                Map.of());
        return new RecordedAlarm(
                Alarm.normal(key)
                        .draft()
                        .state(AlarmState.UNACKNOWLEDGED)
                        .occurrence(1)
                        .done(),
                Optional.of(new RecordedCallout(
                        new Callout.Calling(facts, Place.FOOT, Fixtures.at("2026-11-25T02:35")), List.of())));
    }
}
