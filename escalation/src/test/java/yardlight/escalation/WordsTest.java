package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.AlarmTrigger;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;

/** The words of the outside contract, written down by hand: whoever renames a constant breaks somebody's program. */
class WordsTest {

    @Test
    void states_of_an_alarm() {
        assertThat(words(AlarmState.values(), AlarmState::word))
                .isEqualTo("normal unacknowledged acknowledged returned-unacknowledged latched-unacknowledged"
                        + " latched-acknowledged shelved suppressed-by-design out-of-service");
    }

    @Test
    void outcomes_of_a_report() {
        assertThat(words(Outcome.values(), Outcome::word))
                .isEqualTo("occurred repeated returned duplicate noted delayed shelved suppressed out-of-service");
    }

    @Test
    void priorities_from_the_least_urgent_up() {
        assertThat(words(Priority.values(), Priority::word)).isEqualTo("low medium high critical");
    }

    @Test
    void a_priority_is_found_by_its_word_only() {
        assertThat(Priority.of("critical")).contains(Priority.CRITICAL);
        assertThat(Priority.of("CRITICAL")).isEmpty();
        assertThat(Priority.of("urgent")).isEmpty();
    }

    @Test
    void states_of_a_callout() {
        assertThat(words(Callout.Kind.values(), Callout.Kind::word)).isEqualTo("calling held answered ended exhausted");
    }

    @Test
    void what_ends_a_callout() {
        assertThat(words(Ladder.EndsWhen.values(), Ladder.EndsWhen::word)).isEqualTo("acknowledged normal");
    }

    @Test
    void moves_that_a_person_can_be_refused() {
        assertThat(words(AlarmTrigger.values(), AlarmTrigger::word))
                .isEqualTo("occur return acknowledge reset realarm shelve unshelve suppress unsuppress remove restore");
    }

    @Test
    void states_that_wait_for_an_answer() {
        assertThat(Arrays.stream(AlarmState.values()).filter(AlarmState::awaitsAnswer))
                .containsExactly(
                        AlarmState.UNACKNOWLEDGED,
                        AlarmState.RETURNED_UNACKNOWLEDGED,
                        AlarmState.LATCHED_UNACKNOWLEDGED);
    }

    private static <T> String words(T[] values, Function<T, String> word) {
        return Arrays.stream(values).map(word).collect(Collectors.joining(" "));
    }
}
