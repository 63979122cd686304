package yardlight.demo.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class FiguresTest {

    @Test
    void the_median_is_the_one_in_the_middle_or_between_the_two() {
        assertThat(Figures.median(9, 1, 5)).isEqualTo(5);
        assertThat(Figures.median(4, 1, 3, 100)).isEqualTo(3.5);
        assertThatThrownBy(Figures::median).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_percentile_is_a_value_that_was_measured() {
        long[] hundred = LongStream.rangeClosed(1, 100).toArray();

        assertThat(Figures.percentile(hundred, 0.5)).isEqualTo(50);
        assertThat(Figures.percentile(hundred, 0.99)).isEqualTo(99);
        assertThat(Figures.percentile(hundred, 1)).isEqualTo(100);
        assertThat(Figures.percentile(new long[] {7}, 0.99)).isEqualTo(7);
        assertThat(Figures.percentile(new long[] {30, 10, 20}, 0.5)).isEqualTo(20);
    }

    @Test
    void a_percentile_of_nothing_is_refused() {
        assertThatThrownBy(() -> Figures.percentile(new long[0], 0.5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Figures.percentile(new long[] {1}, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_slope_is_what_is_gained_with_each_step() {
        assertThat(Figures.slope(List.of(0.0, 1.0, 2.0), List.of(5.0, 7.0, 9.0)))
                .isEqualTo(2);
        assertThat(Figures.slope(List.of(0.0, 1.0, 2.0), List.of(5.0, 5.0, 5.0)))
                .isZero();
        assertThat(Figures.slope(List.of(1.0), List.of(5.0))).isZero();
    }

    @Test
    void numbers_are_written_no_finer_than_they_were_measured() {
        assertThat(Figures.written(6543.21)).isEqualTo("6,543");
        assertThat(Figures.written(99.94)).isEqualTo("99.9");
        assertThat(Figures.written(0.516)).isEqualTo("0.52");
    }
}
