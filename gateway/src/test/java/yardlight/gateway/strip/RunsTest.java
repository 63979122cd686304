package yardlight.gateway.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.db.reading.Sample;

class RunsTest {

    private static final Instant AT = Instant.parse("2026-11-25T08:13:00Z");

    private static List<Sample> minutes(int... minutes) {
        var samples = new ArrayList<Sample>();
        for (int minute : minutes) {
            samples.add(Sample.one(AT.plusSeconds(60L * minute), 14));
        }
        return samples;
    }

    @Test
    void are_cut_where_much_longer_than_usual_nothing_was_read() {
        assertThat(Runs.of(minutes(0, 1, 2, 3, 20, 21, 22)))
                .extracting(List::size)
                .containsExactly(4, 3);
    }

    @Test
    void go_over_a_reading_or_two_that_were_lost() {
        assertThat(Runs.of(minutes(0, 1, 2, 5, 6, 7))).hasSize(1);
    }

    @Test
    void are_one_where_readings_come_rarely() {
        assertThat(Runs.of(minutes(0, 60, 120, 180))).hasSize(1);
        assertThat(Runs.of(minutes(5))).hasSize(1);
        assertThat(Runs.of(List.of())).isEmpty();
    }
}
