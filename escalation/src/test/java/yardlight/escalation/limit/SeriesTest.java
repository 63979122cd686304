package yardlight.escalation.limit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SeriesTest {

    private static final Instant START = Instant.parse("2026-11-25T08:00:00Z");

    private static Series every(int seconds, int count) {
        Series series = Series.EMPTY;
        for (int i = 0; i < count; i++) {
            series = series.with(START.plusSeconds((long) i * seconds), i);
        }
        return series;
    }

    @Test
    void a_day_of_readings_every_ten_seconds_stays_small() {
        Series series = every(10, 20_000);

        List<Series.Sample> samples = series.samples();
        Instant newest = samples.get(samples.size() - 1).at();
        assertThat(samples).hasSizeBetween(190, Series.MOST);
        assertThat(samples.get(0).at()).isAfterOrEqualTo(newest.minus(Series.SPAN));
        assertThat(series.since(newest.minus(Duration.ofHours(1)))).hasSizeBetween(60, 61);
    }

    @Test
    void hourly_readings_are_kept_for_a_day() {
        assertThat(every(3_600, 100).size()).isEqualTo(25);
    }

    @Test
    void what_comes_late_finds_its_place() {
        var order = new ArrayList<Integer>();
        for (int i = 0; i < 50; i++) {
            order.add(i);
        }
        Collections.shuffle(order, new Random(7));
        Series series = Series.EMPTY;
        for (int i : order) {
            series = series.with(START.plusSeconds(60L * i), i);
        }

        assertThat(series).isEqualTo(every(60, 50));
    }

    @Test
    void values_keep_seven_digits() {
        Series series = Series.EMPTY
                .with(START, 12.400000000000002)
                .with(START.plusSeconds(60), -1_234_567.89)
                .with(START.plusSeconds(120), 0.000123456789)
                .with(START.plusSeconds(180), 0);

        assertThat(series.values()).containsExactly(12.4, -1_234_568, 0.0001234568, 0);
    }
}
