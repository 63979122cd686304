package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static yardlight.escalation.alarm.OneAlarm.second;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NuisanceTest {

    private static final Nuisance.Numbers USUAL = Nuisance.Numbers.USUAL;

    @Test
    void fewer_activations_than_the_count_are_no_chatter() {
        assertThat(Nuisance.chattering(seconds(), USUAL)).isFalse();
        assertThat(Nuisance.chattering(seconds(0, 1), USUAL)).isFalse();
    }

    @Test
    void only_the_newest_activations_count() {
        assertThat(Nuisance.chattering(seconds(0, 1, 2, 500), USUAL)).isFalse();
        assertThat(Nuisance.chattering(seconds(0, 500, 510, 520), USUAL)).isTrue();
    }

    @Test
    void an_alarm_that_goes_within_the_time_is_fleeting_and_a_longer_one_is_not() {
        assertThat(Nuisance.fleeting(second(0), second(10), USUAL)).isTrue();
        assertThat(Nuisance.fleeting(second(0), second(11), USUAL)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 21})
    void the_count_must_make_sense(int count) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> numbers(count, Duration.ofMinutes(1)))
                .withMessage("chatter count must be 2 to 20: " + count);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 20})
    void the_count_may_be_as_little_as_two_and_as_much_as_is_remembered(int count) {
        assertThatNoException().isThrownBy(() -> numbers(count, Duration.ofMinutes(1)));
    }

    @Test
    void times_must_not_be_negative() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> numbers(3, Duration.ofSeconds(-1)))
                .withMessage("nuisance times must not be negative: PT-1S");
    }

    private static Nuisance.Numbers numbers(int count, Duration within) {
        return new Nuisance.Numbers(count, within, Duration.ZERO, Duration.ZERO, Duration.ZERO);
    }

    private static List<Instant> seconds(long... seconds) {
        return LongStream.of(seconds).mapToObj(OneAlarm::second).toList();
    }
}
