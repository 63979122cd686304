package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.OneAlarm.second;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;

class NewsTest {

    private final OneAlarm tank = new OneAlarm(Timing.PLAIN);

    @Test
    void is_what_starts() {
        assertThat(AlarmRules.news(tank.alarm(), active(Optional.empty()))).isTrue();
    }

    @Test
    void is_not_a_repeat() {
        tank.active(0);

        assertThat(AlarmRules.news(tank.alarm(), active(Optional.empty()))).isFalse();
        assertThat(AlarmRules.news(tank.alarm(), active(Optional.of(Priority.MEDIUM))))
                .isFalse();
    }

    @Test
    void is_a_repeat_that_has_become_more_urgent() {
        tank.active(0);

        assertThat(AlarmRules.news(tank.alarm(), active(Optional.of(Priority.CRITICAL))))
                .isTrue();
    }

    @Test
    void is_what_ends_and_not_what_is_over() {
        Report normal = Fixtures.normal(Fixtures.TANK, second(10));
        assertThat(AlarmRules.news(tank.alarm(), normal)).isFalse();

        tank.active(0);
        assertThat(AlarmRules.news(tank.alarm(), normal)).isTrue();
    }

    @Test
    void is_not_what_an_on_delay_already_waits_for() {
        var delayed = new OneAlarm(OneAlarm.onDelay(60));
        delayed.active(0);

        assertThat(AlarmRules.news(delayed.alarm(), active(Optional.empty()))).isFalse();
    }

    private static Report active(Optional<Priority> priority) {
        Report plain = Fixtures.active(Fixtures.TANK, second(10));
        return new Report(plain.key(), plain.box(), true, priority, plain.measured(), plain.at(), false);
    }
}
