package yardlight.escalation.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TrendTest {

    private static final Instant START = Instant.parse("2026-11-28T00:00:00Z");

    @Test
    void a_steady_rise_is_measured_over_all_of_it() {
        Trend trend = Trend.of(minutes(181, i -> 5 + i / 60.0)).orElseThrow();

        assertThat(trend.rate()).isCloseTo(1, within(1e-9));
        assertThat(trend.value()).isCloseTo(8, within(1e-9));
        assertThat(trend.over()).isEqualTo(Duration.ofHours(3));
        assertThat(trend.at()).isEqualTo(START.plus(Duration.ofHours(3)));
    }

    @Test
    void what_is_longer_ago_than_four_hours_does_not_count() {
        Trend trend = Trend.of(minutes(601, i -> i / 60.0)).orElseThrow();

        assertThat(trend.over()).isEqualTo(Duration.ofHours(4));
    }

    @Test
    void hourly_readings_are_looked_at_over_a_day() {
        var samples = IntStream.rangeClosed(0, 9)
                .mapToObj(i -> new Sample(START.plus(Duration.ofHours(i)), 2 + 0.5 * i))
                .toList();

        assertThat(Trend.of(new Series(samples)).orElseThrow().rate()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void an_inflow_that_doubled_half_an_hour_ago_is_seen_and_the_past_is_given_up() {
        Series series = minutes(181, i -> i <= 150 ? i / 60.0 : 2.5 + (i - 150) / 30.0);

        Trend trend = Trend.of(series).orElseThrow();

        assertThat(trend.rate()).isCloseTo(2, within(0.05));
        assertThat(trend.over()).isLessThanOrEqualTo(Duration.ofMinutes(30));
    }

    @Test
    void wild_readings_do_not_move_it() {
        Trend trend = Trend.of(minutes(121, i -> i % 10 == 0 ? 40 : i / 60.0)).orElseThrow();

        assertThat(trend.rate()).isCloseTo(1, within(0.05));
        assertThat(trend.value()).isCloseTo(2, within(0.05));
    }

    @Test
    void five_readings_are_too_few() {
        assertThat(Trend.of(minutes(5, i -> i))).isEmpty();
        assertThat(Trend.of(Series.EMPTY)).isEmpty();
    }

    @Test
    void a_stretch_begins_where_the_level_last_turned() {
        Series series =
                minutes(181, i -> i < 60 ? 10 - i / 30.0 : i < 120 ? 8 + (i - 60) / 30.0 : 10 - (i - 120) / 30.0);

        assertThat(Turning.stretch(series, 0.2).first().at())
                .isBetween(START.plus(Duration.ofMinutes(119)), START.plus(Duration.ofMinutes(121)));
        assertThat(Turning.stretch(series, 5).first().at()).isEqualTo(START);
    }

    @Test
    void a_single_wrong_reading_is_no_turn() {
        Series series = minutes(121, i -> i == 100 ? 0 : 5 + i / 60.0);

        assertThat(Turning.stretch(series, 0.2).first().at()).isEqualTo(START);
    }

    @Test
    void the_time_left_has_an_interval_around_it() {
        Trend trend = new Trend(START, 16, 2, 0.1, 0.05, 0.01, Duration.ofHours(1), 60);

        Reach reach = Reach.to(20, trend);

        assertThat(reach.expected()).contains(Duration.ofHours(2));
        assertThat(reach.earliest()).isBetween(Duration.ofMinutes(90), Duration.ofMinutes(115));
        assertThat(reach.latest().orElseThrow()).isBetween(Duration.ofMinutes(125), Duration.ofMinutes(165));
    }

    @Test
    void what_does_not_rise_never_gets_there() {
        Reach reach = Reach.to(20, new Trend(START, 16, 0, 0, 0, 0, Duration.ofHours(1), 60));

        assertThat(reach).isEqualTo(new Reach(java.util.Optional.empty(), Reach.FARTHEST, java.util.Optional.empty()));
    }

    @Test
    void what_stands_at_the_height_is_there() {
        Reach reach = Reach.to(16, new Trend(START, 16, 1, 0, 0, 0, Duration.ofHours(1), 60));

        assertThat(reach.expected()).contains(Duration.ZERO);
    }

    @Test
    void samples_out_of_order_are_refused() {
        var sample = new Sample(START, 1);

        assertThatIllegalArgumentException().isThrownBy(() -> new Series(List.of(sample, sample)));
    }

    @Test
    void the_worst_of_the_week_is_kept_day_by_day_and_forgotten_after_it() {
        LocalDate monday = LocalDate.parse("2026-11-23");
        DailyWorst worst = DailyWorst.NONE.plus(monday, 3).plus(monday, 2).plus(monday.plusDays(1), 1);

        assertThat(worst.worst(monday.plusDays(7))).hasValue(3);
        assertThat(worst.worst(monday.plusDays(8))).hasValue(1);
        assertThat(worst.worst(monday.plusDays(9))).isEmpty();
        assertThat(DailyWorst.of(worst.numbers())).isEqualTo(worst);
        DailyWorst month = worst;
        for (int i = 2; i < 40; i++) {
            month = month.plus(monday.plusDays(i), i);
        }
        assertThat(month.days()).hasSize(DailyWorst.KEPT);
        assertThat(month.plus(monday, 1_000)).isEqualTo(month);
    }

    @Test
    void a_drop_is_told_from_a_single_wrong_reading() {
        Drop fell = Drop.within(Duration.ofMinutes(10), minutes(60, i -> i < 55 ? 30 : 12))
                .orElseThrow();
        Drop blip = Drop.within(Duration.ofMinutes(10), minutes(60, i -> i == 59 ? 0 : 30))
                .orElseThrow();

        assertThat(fell).isEqualTo(new Drop(30, 12));
        assertThat(blip.by()).isZero();
        assertThat(Drop.within(Duration.ofMinutes(10), minutes(2, i -> i))).isEmpty();
    }

    @Test
    void the_fastest_falls_are_few_and_an_hour_apart() {
        FastestFalls falls = FastestFalls.NONE;
        for (int i = 0; i < 500; i++) {
            falls = falls.plus(START.plus(Duration.ofMinutes(i * 10L)), i % 37);
        }

        assertThat(falls.falls()).hasSizeLessThanOrEqualTo(FastestFalls.KEPT);
        Instant end = START.plus(Duration.ofDays(10));
        assertThat(falls.largestBefore(end)).isEqualTo(36);
        assertThat(falls.since()).contains(START);
        assertThat(falls.keptFor(Duration.ofDays(3), START.plus(Duration.ofDays(3))))
                .isTrue();
        assertThat(falls.keptFor(Duration.ofDays(3), START.plus(Duration.ofDays(2))))
                .isFalse();
        assertThat(FastestFalls.of(falls.numbers())).isEqualTo(falls);
    }

    @Test
    void a_fall_that_goes_on_is_no_measure_of_itself_and_one_that_was_a_leak_is_forgotten() {
        Instant hour = START.plus(Duration.ofHours(1));
        FastestFalls falls = FastestFalls.NONE.plus(START, 4).plus(hour, 7);

        assertThat(falls.largestBefore(hour)).isEqualTo(4);
        assertThat(falls.largestBefore(hour.plus(Duration.ofHours(1)))).isEqualTo(7);
        assertThat(falls.forgetting(hour).largestBefore(hour.plus(Duration.ofHours(1))))
                .isEqualTo(4);
    }

    @Test
    void what_is_usual_is_the_median_of_the_earlier_times() {
        Remembered two = Remembered.NOTHING.with(START, -1).with(START, -2).with(START.plusSeconds(60), -4);
        Remembered four = two.with(START.plusSeconds(120), -6).with(START.plusSeconds(180), -100);

        assertThat(two.usual()).isEmpty();
        assertThat(four.usual()).hasValue(-4);
        assertThat(Remembered.of(four.numbers())).isEqualTo(four);
        assertThat(Remembered.of(List.of())).isEqualTo(Remembered.NOTHING);
        Remembered many = four;
        for (int i = 4; i < 40; i++) {
            many = many.with(START.plusSeconds(60L * i), i);
        }
        assertThat(many.earlier()).hasSize(Remembered.KEPT);
    }

    private static Series minutes(int many, IntToDoubleFunction value) {
        return new Series(IntStream.range(0, many)
                .mapToObj(i -> new Sample(START.plus(Duration.ofMinutes(i)), value.applyAsDouble(i)))
                .toList());
    }
}
