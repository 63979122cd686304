package yardlight.escalation.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Point;

class SuggestionsTest {

    private static final Instant START = Fixtures.at("2026-10-25T00:00");

    private final List<Reading> readings = new ArrayList<>();
    private Instant now = START;

    /** A value read every ten seconds, so many times. */
    private void read(int times, double value) {
        for (int i = 0; i < times; i++) {
            readings.add(new Reading("mesa-9", "water-tank", value, now));
            now = now.plusSeconds(10);
        }
    }

    private List<Replay.Called> calls(Point point) {
        return Replay.of(point, readings);
    }

    /** Twelve times the pump's start is seen as a high level for a moment, twice the level is high for an hour. */
    @Test
    void fourteen_calls_are_two_with_twenty_seconds_of_on_delay() {
        for (int i = 0; i < 12; i++) {
            read(360, 10);
            read(1, 16.5);
            read(60, 10);
        }
        for (int i = 0; i < 2; i++) {
            read(360, 16.5);
            read(360, 10);
        }

        List<Suggestions.Suggestion> found = Suggestions.of(Fixtures.measuredTank(), readings);

        assertThat(found.get(0).asIs()).isTrue();
        assertThat(found.get(0).calls()).hasSize(14);
        assertThat(found.get(1).onDelay()).isEqualTo(Duration.ofSeconds(20));
        assertThat(found.get(1).calls()).hasSize(2);
        assertThat(found).filteredOn(Suggestions.Suggestion::asIs).hasSize(1);
        Replay.Called last = found.get(1).calls().get(1);
        assertThat(last.condition()).isEqualTo("high");
        assertThat(Duration.between(last.at(), last.over().orElseThrow())).isEqualTo(Duration.ofMinutes(60));
    }

    @Test
    void a_wider_deadband_is_tried_as_well() {
        for (int i = 0; i < 10; i++) {
            read(60, 16.2);
            read(60, 15.4);
        }
        read(10, 2.5);

        List<Suggestions.Suggestion> found = Suggestions.of(Fixtures.measuredTank(), readings);

        assertThat(found.get(0).calls()).hasSize(10);
        assertThat(found)
                .filteredOn(one -> one.deadband().equals(Optional.of(new BigDecimal("0.69"))))
                .first()
                .satisfies(wider -> assertThat(wider.calls()).hasSize(1));
    }

    @Test
    void what_goes_on_at_the_end_is_not_over() {
        read(10, 10);
        read(10, 16.5);

        assertThat(calls(Fixtures.measuredTank()))
                .containsExactly(new Replay.Called("high", START.plusSeconds(100), Optional.empty()));
    }

    @Test
    void a_gap_in_the_readings_is_a_call_as_well() {
        read(10, 10);
        now = now.plusSeconds(3_600);
        read(1, 10);

        assertThat(calls(Fixtures.measuredTank()))
                .extracting(Replay.Called::condition)
                .containsExactly("missing");
    }

    @Test
    void nothing_was_read_and_nothing_would_have_called() {
        assertThat(Suggestions.of(Fixtures.measuredTank(), List.of()))
                .allSatisfy(one -> assertThat(one.calls()).isEmpty());
    }
}
