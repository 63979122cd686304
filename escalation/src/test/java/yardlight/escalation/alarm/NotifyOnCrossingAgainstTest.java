package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.Priority.CRITICAL;
import static yardlight.escalation.alarm.Priority.HIGH;
import static yardlight.escalation.alarm.Priority.LOW;
import static yardlight.escalation.alarm.Priority.MEDIUM;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * RFC 8632, {@code notify-status-changes}, the worked example with the level {@code major}, read: severities major,
 * minor, warning, minor, major, critical, major, then clear, at T1 to T8; notifications at T1, T2, T5, T6, T7, T8.
 *
 * <p>That rule is for programs, which want to hear that a thing got less urgent. Here people are told, and a priority
 * never falls within an occurrence. So the rule itself is written down in this test, and the engine is held against what
 * must be true under both: who is called, is called at one of those times, and at none of the others does anything happen.
 */
class NotifyOnCrossingAgainstTest {

    /** major, minor, warning, minor, major, critical, major; T8 is the clear. */
    private static final List<Priority> SEVERITIES = List.of(HIGH, MEDIUM, LOW, MEDIUM, HIGH, CRITICAL, HIGH);

    private static final List<Integer> PUBLISHED = List.of(1, 2, 5, 6, 7, 8);

    @Test
    void the_order_of_priorities_gives_the_published_times() {
        var times = new ArrayList<Integer>();
        for (int i = 0; i < SEVERITIES.size(); i++) {
            boolean was = i > 0 && SEVERITIES.get(i - 1).atLeast(HIGH);
            if (was || SEVERITIES.get(i).atLeast(HIGH)) {
                times.add(i + 1);
            }
        }
        times.add(8);

        assertThat(times).isEqualTo(PUBLISHED);
    }

    @Test
    void the_engine_calls_when_it_occurs_and_when_it_gets_worse_than_it_ever_was() {
        List<Integer> calls = replay();

        assertThat(calls).containsExactly(1, 6);
        assertThat(PUBLISHED).containsAll(calls);
    }

    @Test
    void the_engine_reports_the_end_at_t8() {
        var alarm = new OneAlarm(Timing.PLAIN);
        alarm.active(1, HIGH);

        assertThat(alarm.normal(8).outcome()).isEqualTo(Outcome.RETURNED);
    }

    /** Everyone who is called answers at once. */
    private static List<Integer> replay() {
        var alarm = new OneAlarm(Timing.PLAIN);
        var calls = new ArrayList<Integer>();
        for (int t = 1; t <= SEVERITIES.size(); t++) {
            if (alarm.active(t * 100L, SEVERITIES.get(t - 1)).calls()) {
                calls.add(t);
                alarm.acknowledge(t * 100L);
            }
        }
        return calls;
    }
}
