package yardlight.escalation.quiet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RestraintTest {

    @Test
    void is_usually_two_texts_a_minute_and_what_the_contact_wants_in_an_hour() {
        assertThat(Restraint.perHour(20)).isEqualTo(new Restraint(2, Duration.ofMinutes(1), 20));
    }

    @Test
    void may_be_as_strict_as_one_text_an_hour() {
        assertThatNoException().isThrownBy(() -> new Restraint(1, Duration.ofHours(1), 1));
    }

    @ParameterizedTest
    @CsvSource({
        "0, PT1M, 20, burst must be at least 1: 0",
        "2, PT0S, 20, within must be positive and at most an hour: PT0S",
        "2, PT61M, 20, within must be positive and at most an hour: PT1H1M",
        "2, PT1M, 0, perHour must be at least 1: 0",
    })
    void refuses_numbers_with_which_nothing_would_ever_be_sent(int burst, String within, int perHour, String why) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Restraint(burst, Duration.parse(within), perHour))
                .withMessage(why);
    }
}
