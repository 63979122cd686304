package yardlight.escalation.quiet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.alarm.Flood;

class RestraintTest {

    private static final Duration PACE = Duration.ofSeconds(75);

    @Test
    void is_usually_two_texts_a_minute_and_what_the_contact_wants_in_an_hour() {
        assertThat(Restraint.perHour(20))
                .isEqualTo(new Restraint(
                        2, 4, Duration.ofMinutes(1), 20, new Flood.Numbers(10, 5, Duration.ofMinutes(10)), PACE));
    }

    @Test
    void may_be_as_strict_as_one_text_an_hour() {
        assertThatNoException().isThrownBy(() -> restraint(1, 1, Duration.ofHours(1), 1, Duration.ofHours(1)));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 4, PT1M, 20, PT75S, burst must be at least 1: 0",
        "2, 1, PT1M, 20, PT75S, criticalBurst must not be less than burst: 1",
        "2, 4, PT0S, 20, PT75S, within must be positive and at most an hour: PT0S",
        "2, 4, PT61M, 20, PT75S, within must be positive and at most an hour: PT1H1M",
        "2, 4, PT1M, 0, PT75S, perHour must be at least 1: 0",
        "2, 4, PT1M, 20, PT0S, pace must be positive and at most an hour: PT0S",
        "2, 4, PT1M, 20, PT61M, pace must be positive and at most an hour: PT1H1M",
    })
    void refuses_numbers_with_which_nothing_would_ever_be_sent(
            int burst, int criticalBurst, Duration within, int perHour, Duration pace, String why) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> restraint(burst, criticalBurst, within, perHour, pace))
                .withMessage(why);
    }

    @Test
    void refuses_a_flood_that_is_longer_than_a_desk_remembers() {
        var day = new Flood.Numbers(10, 5, Duration.ofHours(24));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Restraint(2, 4, Duration.ofMinutes(1), 20, day, PACE))
                .withMessage("flood window must be positive and at most an hour: PT24H");
    }

    private static Restraint restraint(int burst, int criticalBurst, Duration within, int perHour, Duration pace) {
        return new Restraint(burst, criticalBurst, within, perHour, Flood.Numbers.USUAL, pace);
    }
}
