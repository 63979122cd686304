package yardlight.gateway.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;

class HourBeforeTest {

    private static final Instant BEGAN = Instant.parse("2026-11-25T08:13:00Z");

    private static Alarm alarm(boolean active, Optional<Instant> returned) {
        return Alarm.normal(new AlarmKey("mesa-9", "water-tank", "high-high"))
                .draft()
                .occurrence(1)
                .active(active)
                .occurredAt(Optional.of(BEGAN))
                .returnedAt(returned)
                .done();
    }

    private static Stretch around(Alarm alarm, Duration later) {
        return HourBefore.around(alarm, BEGAN.plus(later)).orElseThrow();
    }

    @Test
    void goes_on_to_now_while_it_lasts() {
        Stretch stretch = around(alarm(true, Optional.empty()), Duration.ofMinutes(40));

        assertThat(stretch.from()).isEqualTo(BEGAN.minus(Duration.ofHours(1)));
        assertThat(stretch.to()).isEqualTo(BEGAN.plus(Duration.ofMinutes(40)));
    }

    @Test
    void ends_a_quarter_of_an_hour_after_it_was_over() {
        Alarm over = alarm(false, Optional.of(BEGAN.plus(Duration.ofMinutes(30))));

        assertThat(around(over, Duration.ofDays(3)).to()).isEqualTo(BEGAN.plus(Duration.ofMinutes(45)));
        assertThat(around(over, Duration.ofMinutes(32)).to()).isEqualTo(BEGAN.plus(Duration.ofMinutes(32)));
    }

    @Test
    void is_no_longer_than_one_can_see_in_it() {
        assertThat(around(alarm(true, Optional.empty()), Duration.ofDays(3)).length())
                .isEqualTo(Duration.ofHours(7));
    }

    /** A clock that was put back since must not make a page fall over. */
    @Test
    void is_there_also_for_an_alarm_that_lies_ahead() {
        assertThat(around(alarm(true, Optional.empty()), Duration.ofHours(-2)).to())
                .isAfter(BEGAN);
    }
}
