package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.AlarmTrigger.UNSHELVE;
import static yardlight.escalation.alarm.OneAlarm.second;

import org.junit.jupiter.api.Test;

class ShelvingTest {

    private final OneAlarm tank = new OneAlarm(Timing.PLAIN);

    @Test
    void a_shelved_alarm_is_followed_and_calls_nobody() {
        tank.shelve(3600);

        var step = tank.active(10);

        assertThat(step.outcome()).isEqualTo(Outcome.SHELVED);
        assertThat(step.calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.SHELVED);
        assertThat(tank.alarm().active()).isTrue();
        assertThat(tank.alarm().occurrence()).isEqualTo(1);
    }

    @Test
    void a_shelf_ends_by_itself_at_its_time_and_not_before() {
        tank.shelve(3600);

        tank.due(3599);
        assertThat(tank.state()).isEqualTo(AlarmState.SHELVED);

        tank.due(3600);
        assertThat(tank.state()).isEqualTo(AlarmState.NORMAL);
        assertThat(tank.alarm().shelvedUntil()).isEmpty();
    }

    @Test
    void an_alarm_that_occurred_on_the_shelf_calls_when_the_shelf_ends() {
        tank.shelve(3600);
        tank.active(10);

        var step = tank.due(3600);

        assertThat(step.calls()).isTrue();
        assertThat(tank.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void who_shelves_an_alarm_has_seen_it() {
        tank.active(0);
        tank.shelve(3600);

        var step = tank.due(3600);

        assertThat(step.calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
    }

    @Test
    void an_alarm_that_returned_on_the_shelf_comes_back_normal() {
        tank.active(0);
        tank.shelve(3600);
        tank.normal(10);

        tank.due(3600);

        assertThat(tank.state()).isEqualTo(AlarmState.NORMAL);
    }

    @Test
    void an_alarm_can_be_taken_off_the_shelf_at_any_time() {
        tank.shelve(3600);
        tank.active(10);

        var step = tank.move(UNSHELVE);

        assertThat(step).hasValueSatisfying(taken -> assertThat(taken.calls()).isTrue());
        assertThat(tank.dueAt()).isEmpty();
    }

    @Test
    void shelving_twice_is_refused() {
        tank.shelve(3600);

        assertThat(tank.shelve(7200)).isEmpty();
        assertThat(tank.alarm().shelvedUntil()).contains(second(3600));
    }

    @Test
    void what_is_on_no_shelf_cannot_be_taken_off_it() {
        assertThat(tank.move(UNSHELVE)).isEmpty();
    }

    @Test
    void an_alarm_that_comes_off_the_shelf_and_returns_in_the_same_moment_calls_nobody() {
        tank.shelve(3600);
        tank.active(10);

        var step = tank.normal(3601);

        assertThat(step.calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
    }
}
