package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.AlarmTrigger.UNSHELVE;

import org.junit.jupiter.api.Test;

class RaisedPriorityTest {

    private final OneAlarm tank = new OneAlarm(Timing.PLAIN);

    @Test
    void an_answered_alarm_that_gets_worse_calls_again() {
        tank.active(0);
        tank.acknowledge(10);

        var step = tank.active(20, Priority.CRITICAL);

        assertThat(step.raised()).isTrue();
        assertThat(step.calls()).isTrue();
        assertThat(tank.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(tank.alarm().priority()).isEqualTo(Priority.CRITICAL);
        assertThat(tank.alarm().acknowledgedBy()).isEmpty();
    }

    @Test
    void an_unanswered_alarm_that_gets_worse_is_raised_and_calls_in_case_its_ladder_is_exhausted() {
        tank.active(0);

        var step = tank.active(20, Priority.CRITICAL);

        assertThat(step.raised()).isTrue();
        assertThat(step.calls()).isTrue();
    }

    @Test
    void an_alarm_never_gets_less_urgent_within_an_occurrence() {
        tank.active(0, Priority.HIGH);

        var step = tank.active(20, Priority.LOW);

        assertThat(step.raised()).isFalse();
        assertThat(tank.alarm().priority()).isEqualTo(Priority.HIGH);
    }

    @Test
    void an_alarm_that_comes_back_before_an_answer_is_still_as_urgent() {
        tank.active(0, Priority.CRITICAL);
        tank.normal(100);
        tank.active(200, Priority.LOW);

        assertThat(tank.alarm().priority()).isEqualTo(Priority.CRITICAL);
    }

    @Test
    void a_new_occurrence_is_as_urgent_as_its_own_reports_say() {
        tank.active(0, Priority.CRITICAL);
        tank.acknowledge(10);
        tank.normal(100);
        tank.active(2000, Priority.LOW);

        assertThat(tank.alarm().priority()).isEqualTo(Priority.LOW);
    }

    @Test
    void the_highest_of_the_reports_within_an_on_delay_counts() {
        var slow = new OneAlarm(OneAlarm.onDelay(60));
        slow.active(0, Priority.HIGH);
        slow.active(30, Priority.LOW);
        slow.due(60);

        assertThat(slow.alarm().priority()).isEqualTo(Priority.HIGH);
    }

    @Test
    void an_alarm_that_got_worse_on_the_shelf_calls_when_it_comes_off_and_not_before() {
        tank.active(0);
        tank.shelve(3600);

        var worse = tank.active(20, Priority.CRITICAL);
        assertThat(worse.raised()).isFalse();
        assertThat(worse.calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.SHELVED);

        var back = tank.move(UNSHELVE);
        assertThat(back).hasValueSatisfying(step -> assertThat(step.calls()).isTrue());
    }
}
