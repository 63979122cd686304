package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.OneAlarm.offDelay;
import static yardlight.escalation.alarm.OneAlarm.onDelay;
import static yardlight.escalation.alarm.OneAlarm.second;

import org.junit.jupiter.api.Test;

/** Reports that are older than their arrival: a backlog after days without a link, a letter that took the long way. */
class LateReportsTest {

    private final OneAlarm tank = new OneAlarm(Timing.PLAIN);

    @Test
    void what_is_older_than_the_newest_report_changes_nothing() {
        tank.declared(true, 100, 100);
        Alarm before = tank.alarm();

        var step = tank.declared(false, 90, 200);

        assertThat(step.outcome()).isEqualTo(Outcome.NOTED);
        assertThat(tank.alarm()).isEqualTo(before);
    }

    @Test
    void what_is_as_old_as_the_newest_report_counts() {
        tank.declared(true, 100, 100);

        assertThat(tank.declared(false, 100, 200).outcome()).isEqualTo(Outcome.RETURNED);
    }

    @Test
    void the_clocks_of_two_boxes_are_not_compared() {
        tank.declared(true, 5000, 5000);
        tank.declared(false, 5010, 5010);

        var step = tank.declaredBy("the-new-box", true, 100, 5100);

        assertThat(step.outcome()).isEqualTo(Outcome.OCCURRED);
        assertThat(step.calls()).isTrue();
    }

    @Test
    void a_report_without_a_time_of_its_own_always_counts() {
        tank.declared(true, 100, 100);

        assertThat(tank.normal(101).outcome()).isEqualTo(Outcome.RETURNED);
    }

    @Test
    void the_occurrence_dates_from_the_site_and_the_receipt_from_here() {
        tank.declared(true, 0, 7200);

        assertThat(tank.alarm().occurredAt()).contains(second(0));
        assertThat(tank.alarm().receivedAt()).contains(second(7200));
    }

    @Test
    void a_backlog_is_judged_by_its_own_times_so_that_a_fleeting_condition_does_not_occur() {
        var slow = new OneAlarm(onDelay(60));

        slow.declared(true, 0, 9000);
        slow.declared(false, 5, 9000);
        var step = slow.due(9000);

        assertThat(step.calls()).isFalse();
        assertThat(slow.alarm().occurrence()).isZero();
    }

    @Test
    void a_backlog_that_ends_in_alarm_occurs_as_soon_as_what_is_due_is_done() {
        var slow = new OneAlarm(onDelay(60));

        slow.declared(true, 0, 9000);

        assertThat(slow.dueAt()).contains(second(60));
        assertThat(slow.due(9000).calls()).isTrue();
    }

    @Test
    void a_backlog_with_a_short_break_is_one_activation() {
        var steady = new OneAlarm(offDelay(60));

        steady.declared(true, 0, 9000);
        steady.declared(false, 30, 9000);
        steady.declared(true, 40, 9000);
        steady.due(9000);

        assertThat(steady.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(steady.alarm().occurrence()).isEqualTo(1);
        assertThat(steady.alarm().returnedAt()).isEmpty();
    }
}
