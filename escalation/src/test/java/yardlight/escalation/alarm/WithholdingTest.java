package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.AlarmTrigger.RESTORE;
import static yardlight.escalation.alarm.AlarmTrigger.SUPPRESS;
import static yardlight.escalation.alarm.AlarmTrigger.UNSUPPRESS;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Suppressed by design, and out of service: two ways to withhold an alarm that differ in who does it. */
class WithholdingTest {

    private final OneAlarm tank = new OneAlarm(Timing.PLAIN);

    @ParameterizedTest
    @CsvSource({"SUPPRESS, SUPPRESSED", "REMOVE, OUT_OF_SERVICE"})
    void a_withheld_alarm_is_followed_and_calls_nobody(AlarmTrigger withhold, Outcome outcome) {
        tank.move(withhold);

        var step = tank.active(10);

        assertThat(step.outcome()).isEqualTo(outcome);
        assertThat(step.calls()).isFalse();
        assertThat(step.alarm().active()).isTrue();
        assertThat(step.alarm().occurrence()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"SUPPRESS, UNSUPPRESS", "REMOVE, RESTORE"})
    void it_calls_when_it_comes_back_and_nobody_has_seen_it(AlarmTrigger withhold, AlarmTrigger back) {
        tank.move(withhold);
        tank.active(10);

        var step = tank.move(back);

        assertThat(step).hasValueSatisfying(taken -> assertThat(taken.calls()).isTrue());
        assertThat(tank.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @ParameterizedTest
    @CsvSource({"SUPPRESS, UNSUPPRESS", "REMOVE, RESTORE"})
    void it_comes_back_answered_if_it_was_answered(AlarmTrigger withhold, AlarmTrigger back) {
        tank.active(0);
        tank.acknowledge(5);
        tank.move(withhold);

        var step = tank.move(back);

        assertThat(step).hasValueSatisfying(taken -> assertThat(taken.calls()).isFalse());
        assertThat(tank.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
    }

    @ParameterizedTest
    @CsvSource({"SUPPRESS, UNSUPPRESS", "REMOVE, RESTORE"})
    void it_comes_back_normal_if_its_condition_is_over(AlarmTrigger withhold, AlarmTrigger back) {
        tank.active(0);
        tank.move(withhold);
        tank.normal(10);

        tank.move(back);

        assertThat(tank.state()).isEqualTo(AlarmState.NORMAL);
        assertThat(tank.alarm().live()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"SUPPRESS, UNSUPPRESS", "REMOVE, RESTORE"})
    void a_latching_alarm_comes_back_latched(AlarmTrigger withhold, AlarmTrigger back) {
        tank.timing(OneAlarm.latching());
        tank.move(withhold);
        tank.active(10);
        tank.normal(20);

        var step = tank.move(back);

        assertThat(step).hasValueSatisfying(taken -> assertThat(taken.calls()).isTrue());
        assertThat(tank.state()).isEqualTo(AlarmState.LATCHED_UNACKNOWLEDGED);
    }

    @ParameterizedTest
    @CsvSource({"SUPPRESS", "REMOVE"})
    void a_withheld_alarm_can_be_neither_answered_nor_shelved(AlarmTrigger withhold) {
        tank.active(0);
        tank.move(withhold);

        assertThat(tank.acknowledge(5)).isEmpty();
        assertThat(tank.shelve(3600)).isEmpty();
        assertThat(tank.alarm().seen()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"SUPPRESS", "REMOVE"})
    void each_comes_back_by_its_own_way_only(AlarmTrigger withhold) {
        tank.move(withhold);

        assertThat(tank.move(withhold == SUPPRESS ? RESTORE : UNSUPPRESS)).isEmpty();
        assertThat(tank.move(withhold)).isEmpty();
    }
}
