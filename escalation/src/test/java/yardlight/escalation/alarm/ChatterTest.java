package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.OneAlarm.second;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A float switch in waves: on and off every few seconds. */
class ChatterTest {

    private final OneAlarm tank = new OneAlarm(Timing.PLAIN);

    @Test
    void a_chattering_alarm_returns_only_after_it_has_settled() {
        flutter(0, 40);

        assertThat(tank.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(tank.dueAt()).contains(second(50 + 120));

        tank.due(170);
        assertThat(tank.state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
        assertThat(tank.alarm().returnedAt()).contains(second(50));
    }

    @Test
    void fifteen_turns_in_five_minutes_are_one_occurrence() {
        flutter(0, 280);

        assertThat(tank.alarm().occurrence()).isEqualTo(1);
        assertThat(tank.alarm().repeats()).isEqualTo(14);
    }

    @Test
    void an_answer_once_it_chatters_holds_for_the_whole_flutter() {
        flutter(0, 40);
        tank.acknowledge(55);

        flutter(60, 280);

        assertThat(tank.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(tank.alarm().occurrence()).isEqualTo(1);
    }

    @Test
    void an_answer_early_in_the_flutter_is_not_asked_for_again_when_it_turns_out_to_chatter() {
        tank.active(0);
        tank.normal(10);
        tank.active(20);
        tank.called("c1");
        tank.acknowledge(25);
        tank.normal(30);

        var step = tank.active(40);

        assertThat(step.calls()).isFalse();
        assertThat(tank.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(tank.alarm().acknowledgedBy()).contains("ana");
        assertThat(tank.alarm().callout()).contains("c1");
    }

    @Test
    void an_answer_older_than_the_time_to_settle_is_none() {
        var wide = new Nuisance.Numbers(
                3, Duration.ofMinutes(10), Duration.ofMinutes(1), Duration.ofSeconds(10), Duration.ofHours(24));
        var slow = new OneAlarm(new Timing(Duration.ZERO, Duration.ZERO, false, Optional.empty(), wide));
        for (long at : new long[] {0, 100}) {
            slow.active(at);
            slow.acknowledge(at + 1);
            slow.normal(at + 2);
        }

        assertThat(slow.active(161).calls()).isTrue();
        assertThat(slow.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void only_so_many_activations_are_remembered() {
        flutter(0, 1000);

        assertThat(tank.alarm().activations()).hasSize(Nuisance.KEPT).endsWith(second(1000));
    }

    /** On every twenty seconds from the first to the last second, for ten seconds each. */
    private void flutter(long first, long last) {
        for (long at = first; at <= last; at += 20) {
            tank.active(at);
            tank.normal(at + 10);
        }
    }
}
