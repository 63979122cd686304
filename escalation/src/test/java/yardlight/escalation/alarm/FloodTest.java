package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static yardlight.escalation.alarm.OneAlarm.second;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class FloodTest {

    private static final Flood.Numbers THREE = new Flood.Numbers(3, 2, Duration.ofSeconds(100));

    @Test
    void begins_when_enough_alarms_are_in_the_window() {
        assertThat(after(0, 1).on()).isFalse();
        assertThat(after(0, 1, 2).on()).isTrue();
    }

    @Test
    void forgets_an_alarm_that_is_exactly_as_old_as_the_window() {
        assertThat(after(0, 50, 99).on()).isTrue();
        assertThat(after(0, 50, 100).on()).isFalse();
    }

    @Test
    void goes_on_until_fewer_than_the_lower_number_are_left() {
        Flood flood = after(0, 1, 2);

        assertThat(flood.at(second(100), THREE).on()).isTrue();
        assertThat(flood.at(second(101), THREE).on()).isFalse();
    }

    @Test
    void ends_although_the_next_alarm_comes_before_anybody_looks() {
        assertThat(after(0, 1, 2, 102).on()).isFalse();
        assertThat(after(0, 1, 90, 101, 180).on()).isTrue();
    }

    @Test
    void goes_on_when_one_alarm_leaves_in_the_moment_in_which_another_comes() {
        assertThat(after(0, 1, 2, 101).on()).isTrue();
        assertThat(after(0, 1, 2, 102).on()).isFalse();
    }

    @Test
    void does_not_begin_again_by_itself_once_it_has_ended() {
        assertThat(after(0, 1, 2).at(second(500), THREE)).isEqualTo(Flood.NONE);
    }

    @Test
    void remembers_no_more_than_it_needs() {
        assertThat(after(0, 1, 2, 3, 4, 5, 6, 7).recent()).containsExactly(second(5), second(6), second(7));
    }

    @Test
    void must_begin_at_or_above_where_it_ends() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Flood.Numbers(4, 5, Duration.ofMinutes(10)))
                .withMessage("flood must begin at or above where it ends: 4 and 5");
        assertThatIllegalArgumentException().isThrownBy(() -> new Flood.Numbers(4, 0, Duration.ofMinutes(10)));
        assertThatNoException().isThrownBy(() -> new Flood.Numbers(1, 1, Duration.ofMinutes(10)));
    }

    @Test
    void needs_a_window() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Flood.Numbers(10, 5, Duration.ZERO))
                .withMessage("flood window must be positive: PT0S");
    }

    private static Flood after(long... alarms) {
        Flood flood = Flood.NONE;
        for (long at : alarms) {
            flood = flood.plus(second(at), THREE);
        }
        return flood;
    }
}
