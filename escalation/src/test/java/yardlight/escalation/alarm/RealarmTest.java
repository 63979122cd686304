package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.AlarmTrigger.SUPPRESS;
import static yardlight.escalation.alarm.AlarmTrigger.UNSHELVE;
import static yardlight.escalation.alarm.AlarmTrigger.UNSUPPRESS;
import static yardlight.escalation.alarm.OneAlarm.realarm;
import static yardlight.escalation.alarm.OneAlarm.second;

import org.junit.jupiter.api.Test;

class RealarmTest {

    private final OneAlarm tank = new OneAlarm(realarm(600));

    @Test
    void an_answered_alarm_calls_again_while_its_condition_stays() {
        tank.active(0);
        tank.acknowledge(100);

        assertThat(tank.due(699).calls()).isFalse();
        assertThat(tank.due(700).calls()).isTrue();
        assertThat(tank.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void an_alarm_that_nobody_answered_calls_again_too() {
        tank.active(0);

        assertThat(tank.due(600).calls()).isTrue();
        assertThat(tank.dueAt()).contains(second(1200));
    }

    @Test
    void an_alarm_that_calls_again_shows_no_old_answer() {
        tank.active(0);
        tank.acknowledge(100);
        tank.due(700);

        assertThat(tank.alarm().seen()).isFalse();
        assertThat(tank.alarm().acknowledgedAt()).isEmpty();
        assertThat(tank.alarm().acknowledgedBy()).isEmpty();
    }

    @Test
    void an_alarm_that_returned_never_calls_again() {
        tank.active(0);
        tank.normal(10);

        assertThat(tank.dueAt()).isEmpty();
    }

    @Test
    void nothing_calls_again_where_it_is_not_wanted() {
        var plain = new OneAlarm(Timing.PLAIN);
        plain.active(0);
        plain.acknowledge(10);

        assertThat(plain.dueAt()).isEmpty();
    }

    @Test
    void nothing_calls_again_once_it_is_no_longer_wanted() {
        tank.active(0);
        tank.acknowledge(100);
        tank.timing(Timing.PLAIN);

        assertThat(tank.due(700).calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(tank.dueAt()).isEmpty();
    }

    @Test
    void time_that_passed_unnoticed_calls_once_and_not_for_every_turn() {
        tank.active(0);
        tank.acknowledge(0);

        tank.due(6000);

        assertThat(tank.dueAt()).contains(second(6600));
    }

    @Test
    void a_report_that_was_long_under_way_does_not_call_twice_at_once() {
        tank.declared(true, 0, 7200);

        assertThat(tank.dueAt()).contains(second(7800));
    }

    @Test
    void an_alarm_that_comes_off_the_shelf_calls_again_in_its_turn() {
        tank.active(0);
        tank.shelve(1000);
        tank.due(999);
        tank.move(UNSHELVE);

        assertThat(tank.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(tank.due(1599).calls()).isTrue();
    }

    @Test
    void the_timer_changes_nothing_while_the_alarm_is_suppressed() {
        tank.active(0);
        tank.acknowledge(10);
        tank.move(SUPPRESS);

        assertThat(tank.due(610).calls()).isFalse();
        tank.move(UNSUPPRESS);

        assertThat(tank.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(tank.alarm().acknowledgedBy()).contains("ana");
        assertThat(tank.due(1210).calls()).isTrue();
    }
}
