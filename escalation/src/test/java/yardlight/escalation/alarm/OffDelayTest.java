package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.OneAlarm.offDelay;
import static yardlight.escalation.alarm.OneAlarm.second;

import org.junit.jupiter.api.Test;

class OffDelayTest {

    private final OneAlarm tank = new OneAlarm(offDelay(60));

    @Test
    void without_a_delay_the_alarm_returns_at_once() {
        var prompt = new OneAlarm(offDelay(0));
        prompt.active(0);

        assertThat(prompt.normal(10).outcome()).isEqualTo(Outcome.RETURNED);
        assertThat(prompt.state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
        assertThat(prompt.alarm().returnedAt()).contains(second(10));
    }

    @Test
    void the_alarm_stays_while_the_delay_runs() {
        tank.active(0);

        assertThat(tank.normal(10).outcome()).isEqualTo(Outcome.NOTED);
        assertThat(tank.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(tank.dueAt()).contains(second(70));
    }

    @Test
    void the_alarm_returns_when_the_delay_is_over_and_dates_from_its_start() {
        tank.active(0);
        tank.normal(10);

        tank.due(69);
        assertThat(tank.alarm().active()).isTrue();

        tank.due(70);
        assertThat(tank.state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
        assertThat(tank.alarm().returnedAt()).contains(second(10));
    }

    @Test
    void a_condition_that_is_back_within_the_delay_is_the_same_activation() {
        tank.active(0);
        tank.acknowledge(5);
        tank.normal(10);

        var step = tank.active(69);

        assertThat(step.outcome()).isEqualTo(Outcome.REPEATED);
        assertThat(step.calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(tank.dueAt()).isEmpty();
    }

    @Test
    void a_condition_that_is_back_within_the_delay_still_counts_towards_chatter() {
        tank.active(0);
        tank.normal(10);
        tank.active(20);

        assertThat(tank.alarm().activations()).containsExactly(second(0), second(20));
    }

    @Test
    void a_second_report_of_the_end_does_not_start_the_delay_anew() {
        tank.active(0);
        tank.normal(10);
        tank.normal(40);

        assertThat(tank.dueAt()).contains(second(70));
    }
}
