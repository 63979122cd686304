package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.OneAlarm.second;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;

class RepeatsTest {

    private final OneAlarm tank = new OneAlarm(Timing.PLAIN);

    @Test
    void a_repeat_is_counted_and_calls_nobody() {
        tank.active(0);

        var step = tank.active(10);

        assertThat(step.outcome()).isEqualTo(Outcome.REPEATED);
        assertThat(step.calls()).isFalse();
        assertThat(tank.alarm().repeats()).isEqualTo(1);
        assertThat(tank.alarm().occurrence()).isEqualTo(1);
        assertThat(tank.alarm().occurredAt()).contains(second(0));
    }

    @Test
    void a_repeat_brings_the_newest_numbers() {
        tank.active(0);
        Report higher = new Report(
                Fixtures.TANK,
                Optional.of("mesa-9-box"),
                true,
                Optional.empty(),
                Fixtures.measured("18.7", "18.0", "ft"),
                second(10),
                false);

        tank.arrives(higher, 10);

        assertThat(tank.alarm().measured()).isEqualTo(higher.measured());
    }

    @Test
    void a_bare_repeat_leaves_the_numbers_as_they_were() {
        Report first = new Report(
                Fixtures.TANK,
                Optional.of("mesa-9-box"),
                true,
                Optional.empty(),
                Fixtures.measured("18.4", "18.0", "ft"),
                second(0),
                false);
        tank.arrives(first, 0);

        tank.active(10);

        assertThat(tank.alarm().measured()).isEqualTo(first.measured());
    }

    @Test
    void an_alarm_that_comes_back_before_an_answer_calls_again_as_the_same_occurrence() {
        tank.active(0);
        tank.normal(100);

        var step = tank.active(200);

        assertThat(step.outcome()).isEqualTo(Outcome.OCCURRED);
        assertThat(step.calls()).isTrue();
        assertThat(tank.alarm().occurrence()).isEqualTo(1);
        assertThat(tank.alarm().repeats()).isEqualTo(1);
        assertThat(tank.alarm().occurredAt()).contains(second(0));
        assertThat(tank.alarm().receivedAt()).contains(second(0));
        assertThat(tank.alarm().returnedAt()).isEmpty();
    }

    @Test
    void an_alarm_that_comes_back_after_an_answer_is_a_new_occurrence() {
        tank.active(0);
        tank.active(10);
        tank.acknowledge(20);
        tank.normal(100);

        var step = tank.active(2000);

        assertThat(step.calls()).isTrue();
        assertThat(tank.alarm().id()).isEqualTo("mesa-9.water-tank.high-high.2");
        assertThat(tank.alarm().repeats()).isZero();
        assertThat(tank.alarm().acknowledgedBy()).isEmpty();
    }

    @Test
    void a_new_occurrence_has_no_callout_yet() {
        tank.active(0);
        tank.called("c1");
        tank.acknowledge(20);
        tank.normal(100);

        assertThat(tank.active(2000).alarm().callout()).isEmpty();
    }

    @Test
    void an_occurrence_that_goes_on_keeps_its_callout() {
        tank.active(0);
        tank.called("c1");
        tank.normal(100);

        assertThat(tank.active(200).alarm().callout()).contains("c1");
    }

    @Test
    void a_report_that_a_normal_condition_is_normal_is_noted() {
        assertThat(tank.normal(0).outcome()).isEqualTo(Outcome.NOTED);
        assertThat(tank.alarm().live()).isFalse();
    }

    @Test
    void an_answer_to_a_normal_alarm_is_refused() {
        assertThat(tank.acknowledge(0)).isEmpty();
        assertThat(tank.alarm().acknowledgedAt()).isEmpty();
    }

    @Test
    void an_answer_after_the_return_ends_the_occurrence() {
        tank.active(0);
        tank.normal(100);

        assertThat(tank.acknowledge(200)).isPresent();
        assertThat(tank.state()).isEqualTo(AlarmState.NORMAL);
        assertThat(tank.alarm().acknowledgedBy()).contains("ana");
    }
}
