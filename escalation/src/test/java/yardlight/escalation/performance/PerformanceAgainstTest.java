package yardlight.escalation.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;

/** A time's alarms against what ISA-18.2 calls chattering, fleeting and stale, as it is quoted in courses (read second hand). */
class PerformanceAgainstTest {

    private static final Instant ZERO = Instant.parse("2026-11-01T00:00:00Z");
    private static final Span MONTH = new Span(ZERO, ZERO.plus(Duration.ofDays(30)));
    private static final Instant END = MONTH.to();

    private static PastAlarm alarm(AlarmKey key, Priority priority, long at, long over) {
        Instant began = ZERO.plusSeconds(at);
        return new PastAlarm(
                key,
                priority,
                true,
                began,
                began,
                Optional.of(ZERO.plusSeconds(over)),
                Optional.empty(),
                List.of(began));
    }

    private static PastAlarm alarm(long at, long over) {
        return alarm(Fixtures.TANK, Priority.HIGH, at, over);
    }

    private static Performance of(List<PastAlarm> alarms) {
        return Performance.of(alarms, MONTH, ZoneOffset.UTC, END, key -> Timing.PLAIN);
    }

    /** The window is closed: 60 s inclusive (derived, recomputed). */
    @ParameterizedTest
    @CsvSource({"0, 30, 60, true", "0, 30, 61, false", "0, 10, 20, true"})
    void three_activations_within_a_minute_are_chatter(long first, long second, long third, boolean chatters) {
        Performance found = of(List.of(alarm(first, first + 5), alarm(second, second + 5), alarm(third, third + 5)));

        assertThat(found.chattering().contains(Fixtures.TANK)).isEqualTo(chatters);
    }

    @Test
    void activations_within_one_occurrence_count_as_chatter_too() {
        List<Instant> activations = List.of(ZERO, ZERO.plusSeconds(10), ZERO.plusSeconds(20));
        var alarm = new PastAlarm(
                Fixtures.TANK, Priority.HIGH, true, ZERO, ZERO, Optional.empty(), Optional.empty(), activations);

        assertThat(of(List.of(alarm)).chattering()).containsExactly(Fixtures.TANK);
    }

    /** Active for longer than 24 h: 24 h exactly is not stale, one second later is (read second hand). */
    @ParameterizedTest
    @CsvSource({"86400, 0", "86401, 1"})
    void longer_than_a_day_is_stale_and_a_day_is_not(long seconds, int stalest) {
        assertThat(of(List.of(alarm(3600, 3600 + seconds))).stalest()).isEqualTo(stalest);
    }

    @Test
    void stale_alarms_are_counted_by_the_day_on_which_most_were_there() {
        var alarms = new ArrayList<PastAlarm>();
        for (int i = 0; i < 6; i++) {
            alarms.add(alarm(new AlarmKey("mesa-9", "p-" + i, "high"), Priority.LOW, 86_400L * i, 86_400L * 10));
        }
        alarms.add(alarm(new AlarmKey("mesa-9", "late", "high"), Priority.LOW, 86_400L * 20, 86_400L * 25));

        assertThat(of(alarms).stalest()).isEqualTo(6);
    }

    @Test
    void what_began_before_the_time_is_stale_in_it_and_no_alarm_of_it() {
        Performance found = of(List.of(alarm(-86_400 * 3, 3600)));

        assertThat(found.stalest()).isEqualTo(1);
        assertThat(found.occurred()).isZero();
    }

    /** The standard has no number for it; ten seconds are ours. */
    @Test
    void what_goes_within_seconds_and_unanswered_is_fleeting() {
        Instant answered = ZERO.plusSeconds(105);
        var seen = new PastAlarm(
                Fixtures.TANK,
                Priority.HIGH,
                true,
                ZERO.plusSeconds(100),
                ZERO.plusSeconds(100),
                Optional.of(ZERO.plusSeconds(108)),
                Optional.of(answered),
                List.of());

        assertThat(of(List.of(alarm(0, 10), alarm(1000, 1011), seen)).fleeting())
                .isEqualTo(1);
    }

    /** About 80 / 15 / 5 % for low, medium and high (ISA-18.2, read second hand). */
    @Test
    void eighty_fifteen_and_five_of_a_hundred_are_80_15_and_5_percent() {
        var alarms = new ArrayList<PastAlarm>();
        for (int i = 0; i < 100; i++) {
            Priority priority = i < 80 ? Priority.LOW : i < 95 ? Priority.MEDIUM : Priority.HIGH;
            alarms.add(alarm(new AlarmKey("mesa-9", "p-" + i, "high"), priority, i * 3600L, i * 3600L + 60));
        }

        Map<Priority, Double> parts = of(alarms).priorities();

        assertThat(parts.get(Priority.LOW)).isEqualTo(0.80, within(1e-9));
        assertThat(parts.get(Priority.MEDIUM)).isEqualTo(0.15, within(1e-9));
        assertThat(parts.get(Priority.HIGH)).isEqualTo(0.05, within(1e-9));
    }

    @Test
    void what_was_withheld_is_counted_and_is_no_part_of_the_rates() {
        Instant at = ZERO.plusSeconds(5);
        var withheld = new PastAlarm(
                Fixtures.PUMP, Priority.LOW, false, at, at, Optional.empty(), Optional.empty(), List.of());

        Performance found = of(List.of(alarm(0, 60), withheld));

        assertThat(found.occurred()).isEqualTo(2);
        assertThat(found.announced()).isEqualTo(1);
        assertThat(found.frequent()).extracting(Performance.Frequent::key).containsExactly(Fixtures.TANK);
        assertThat(found.priorities()).containsOnlyKeys(Priority.HIGH);
    }

    @Test
    void answers_are_told_by_rank() {
        var alarms = new ArrayList<PastAlarm>();
        for (int i = 1; i <= 10; i++) {
            Instant at = ZERO.plusSeconds(i * 3600L);
            alarms.add(new PastAlarm(
                    Fixtures.TANK,
                    Priority.HIGH,
                    true,
                    at,
                    at,
                    Optional.of(at.plusSeconds(900)),
                    Optional.of(at.plusSeconds(i * 60L)),
                    List.of()));
        }
        alarms.add(alarm(90_000, 90_900));

        Performance.Answers answers = of(alarms).answers();

        assertThat(answers)
                .isEqualTo(new Performance.Answers(
                        10,
                        1,
                        Optional.of(Duration.ofMinutes(5)),
                        Optional.of(Duration.ofMinutes(9)),
                        Optional.of(Duration.ofMinutes(10))));
    }
}
