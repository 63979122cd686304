package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.OneAlarm.onDelay;
import static yardlight.escalation.alarm.OneAlarm.second;

import org.junit.jupiter.api.Test;

class OnDelayTest {

    private final OneAlarm tank = new OneAlarm(onDelay(60));

    @Test
    void without_a_delay_the_alarm_occurs_at_once() {
        var prompt = new OneAlarm(onDelay(0));

        var step = prompt.active(0);

        assertThat(step.outcome()).isEqualTo(Outcome.OCCURRED);
        assertThat(step.calls()).isTrue();
        assertThat(prompt.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(prompt.alarm().occurrence()).isEqualTo(1);
        assertThat(prompt.alarm().occurredAt()).contains(second(0));
    }

    @Test
    void a_condition_is_only_delayed_while_the_delay_runs() {
        var step = tank.active(0);

        assertThat(step.outcome()).isEqualTo(Outcome.DELAYED);
        assertThat(step.calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.NORMAL);
        assertThat(tank.alarm().live()).isTrue();
        assertThat(tank.dueAt()).contains(second(60));
    }

    @Test
    void the_alarm_occurs_when_the_delay_is_over_and_not_a_second_before() {
        tank.active(0);

        assertThat(tank.due(59).calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.NORMAL);

        assertThat(tank.due(60).calls()).isTrue();
        assertThat(tank.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void the_occurrence_dates_from_the_start_of_the_delay() {
        tank.active(0);
        tank.due(75);

        assertThat(tank.alarm().occurredAt()).contains(second(0));
        assertThat(tank.alarm().receivedAt()).contains(second(0));
    }

    @Test
    void a_condition_that_clears_within_the_delay_never_occurs() {
        tank.active(0);

        assertThat(tank.normal(59).outcome()).isEqualTo(Outcome.NOTED);
        assertThat(tank.dueAt()).isEmpty();
        assertThat(tank.due(600).calls()).isFalse();
        assertThat(tank.alarm().occurrence()).isZero();
    }

    @Test
    void a_new_condition_starts_the_delay_anew() {
        tank.active(0);
        tank.normal(30);
        tank.active(40);

        assertThat(tank.dueAt()).contains(second(100));
    }

    @Test
    void a_repeat_does_not_start_the_delay_anew() {
        tank.active(0);
        tank.active(30);

        assertThat(tank.dueAt()).contains(second(60));
    }

    @Test
    void a_report_after_an_unnoticed_end_of_the_delay_calls_and_is_a_repeat() {
        tank.active(0);

        var step = tank.active(90);

        assertThat(step.outcome()).isEqualTo(Outcome.REPEATED);
        assertThat(step.calls()).isTrue();
        assertThat(tank.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void an_alarm_that_came_and_went_unnoticed_calls_nobody() {
        tank.active(0);

        var step = tank.normal(90);

        assertThat(step.outcome()).isEqualTo(Outcome.RETURNED);
        assertThat(step.calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
        assertThat(tank.alarm().occurrence()).isEqualTo(1);
    }
}
