package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.AlarmTrigger.RESET;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class LatchingTest {

    private final OneAlarm tank = new OneAlarm(OneAlarm.latching());

    @BeforeEach
    void occurs() {
        tank.active(0);
    }

    @Test
    void a_return_leaves_the_alarm_latched_and_calls_nobody_anew() {
        var step = tank.normal(10);

        assertThat(step.outcome()).isEqualTo(Outcome.RETURNED);
        assertThat(step.calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.LATCHED_UNACKNOWLEDGED);
        assertThat(tank.alarm().active()).isFalse();
    }

    @Test
    void an_answer_alone_does_not_clear_it() {
        tank.normal(10);

        assertThat(tank.acknowledge(20)).isPresent();
        assertThat(tank.state()).isEqualTo(AlarmState.LATCHED_ACKNOWLEDGED);
    }

    @Test
    void a_reset_clears_it_once_it_is_over_and_answered() {
        tank.acknowledge(5);
        tank.normal(10);

        assertThat(tank.move(RESET)).isPresent();
        assertThat(tank.state()).isEqualTo(AlarmState.NORMAL);
        assertThat(tank.alarm().latched()).isFalse();
    }

    @Test
    void a_reset_is_refused_while_the_condition_is_present() {
        tank.acknowledge(5);

        assertThat(tank.move(RESET)).isEmpty();
        assertThat(tank.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
    }

    @Test
    void a_reset_is_refused_before_an_answer() {
        tank.normal(10);

        assertThat(tank.move(RESET)).isEmpty();
        assertThat(tank.alarm().latched()).isTrue();
    }

    @Test
    void when_it_occurs_again_somebody_is_called_although_it_was_answered() {
        tank.acknowledge(5);
        tank.normal(10);

        var step = tank.active(100);

        assertThat(step.calls()).isTrue();
        assertThat(tank.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(tank.alarm().acknowledgedBy()).isEmpty();
    }

    @Test
    void when_it_occurs_again_it_is_still_the_same_occurrence() {
        tank.normal(10);
        tank.active(100);

        assertThat(tank.alarm().occurrence()).isEqualTo(1);
        assertThat(tank.alarm().repeats()).isEqualTo(1);
        assertThat(tank.alarm().latched()).isFalse();
    }

    @Test
    void an_answer_to_a_chatter_does_not_keep_a_latched_alarm_from_calling() {
        tank.normal(10);
        tank.active(20);
        tank.normal(25);
        tank.acknowledge(30);

        assertThat(tank.active(40).calls()).isTrue();
        assertThat(tank.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(tank.alarm().seen()).isFalse();
    }
}
