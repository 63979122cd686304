package yardlight.gateway.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import yardlight.db.reading.Sample;

class AxisTest {

    private static final Instant AT = Instant.parse("2026-11-25T08:13:00Z");

    @Test
    void has_marks_at_round_figures() {
        Axis axis = Axis.over(13.2, 18.4, 6);

        assertThat(axis.marks().stream().map(axis::words)).containsExactly("13", "14", "15", "16", "17", "18");
    }

    @Test
    void writes_as_many_digits_as_its_step_has() {
        Axis axis = Axis.over(0.51, 0.59, 4);

        assertThat(axis.marks().stream().map(axis::words)).containsExactly("0.52", "0.54", "0.56", "0.58");
    }

    @Test
    void has_room_for_a_curve_that_does_not_move() {
        Axis axis = Axis.over(12, 12, 4);

        assertThat(axis.low()).isLessThan(12);
        assertThat(axis.high()).isGreaterThan(12);
        assertThat(Axis.over(0, 0, 4).up(0)).isEqualTo(0.5);
    }

    @Test
    void takes_in_a_limit_that_is_near_and_not_one_that_would_flatten_the_curve() {
        List<Sample> curve = List.of(Sample.one(AT, 14), Sample.one(AT.plusSeconds(60), 15));

        Axis axis = Axis.around(curve, List.of(new Limit("high", 16, true), new Limit("high-high", 40, true)), 5);

        assertThat(axis.up(16)).isBetween(0.8, 1.0);
        assertThat(axis.up(40)).isGreaterThan(2);
    }

    @Test
    void never_has_many_more_marks_than_it_should_whatever_the_figures() {
        var random = new Random(7);
        for (int i = 0; i < 10_000; i++) {
            double low = random.nextGaussian() * Math.pow(10, random.nextInt(9) - 3);
            double high = low + Math.abs(random.nextGaussian()) * Math.pow(10, random.nextInt(9) - 3);

            Axis axis = Axis.over(low, high, 5);

            assertThat(axis.marks()).as(low + " to " + high).hasSizeBetween(1, 7);
            assertThat(axis.up(low)).isBetween(0.0, 1.0);
            assertThat(axis.up(high)).isBetween(0.0, 1.0);
        }
    }
}
