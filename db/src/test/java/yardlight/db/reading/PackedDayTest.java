package yardlight.db.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PackedDayTest {

    private static final Instant DAY = Instant.parse("2026-11-25T00:00:00Z");
    private static final Duration QUARTER = Duration.ofMinutes(15);

    @Test
    void gives_back_every_reading_to_the_last_bit() {
        for (long seed = 0; seed < 2_000; seed++) {
            var random = new Random(seed);
            List<Sample> readings = readings(random);

            PackedDay day = PackedDay.read(PackedDay.empty().with(readings).bytes());

            assertThat(day.samples()).as("seed " + seed).containsExactlyElementsOf(readings);
        }
    }

    @Test
    void gives_back_every_sum_to_the_last_bit() {
        for (long seed = 0; seed < 500; seed++) {
            PackedDay sums = PackedDay.empty().with(readings(new Random(seed))).summed(QUARTER);

            assertThat(PackedDay.read(sums.bytes()).samples())
                    .as("seed " + seed)
                    .containsExactlyElementsOf(sums.samples());
        }
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {
                0.0,
                -0.0,
                0.1,
                -12.4,
                3.77952,
                1e-9,
                999_999_999_999_999_999.0,
                Double.MIN_VALUE,
                Double.MAX_VALUE,
                6.894757293168361,
                1.0 / 3
            })
    void gives_back_strange_values_beside_plain_ones(double strange) {
        List<Sample> readings = List.of(
                Sample.one(DAY, 18.4), Sample.one(DAY.plusMillis(1), strange), Sample.one(DAY.plusSeconds(60), 18.5));

        PackedDay day = PackedDay.read(PackedDay.empty().with(readings).bytes());

        assertThat(day.samples())
                .extracting(one -> Double.doubleToRawLongBits(one.mean()))
                .containsExactly(
                        Double.doubleToRawLongBits(18.4),
                        Double.doubleToRawLongBits(strange),
                        Double.doubleToRawLongBits(18.5));
    }

    @Test
    void keeps_the_reading_that_came_first_when_another_has_the_same_time() {
        PackedDay day = PackedDay.empty().with(List.of(Sample.one(DAY, 1)));

        assertThat(day.takes(DAY)).isFalse();
        assertThat(day.with(List.of(Sample.one(DAY, 2))).samples()).containsExactly(Sample.one(DAY, 1));
    }

    @Test
    void puts_late_readings_between_the_others() {
        PackedDay day = PackedDay.empty().with(List.of(Sample.one(DAY, 1), Sample.one(DAY.plusSeconds(120), 3)));

        PackedDay more = PackedDay.read(day.bytes()).with(List.of(Sample.one(DAY.plusSeconds(60), 2)));

        assertThat(more.samples()).extracting(Sample::mean).containsExactly(1.0, 2.0, 3.0);
    }

    @Test
    void sums_up_smallest_largest_mean_and_count_of_each_step() {
        PackedDay day = PackedDay.empty()
                .with(List.of(
                        Sample.one(DAY, 12.1),
                        Sample.one(DAY.plusSeconds(60), 12.4),
                        Sample.one(DAY.plusSeconds(899), 12.2),
                        Sample.one(DAY.plusSeconds(900), 13)));

        // The mean is kept to two more digits than the readings have.
        assertThat(day.summed(QUARTER).samples())
                .containsExactly(
                        new Sample(DAY, 12.1, 12.4, 12.233, 3), new Sample(DAY.plusSeconds(900), 13, 13, 13, 1));
    }

    @Test
    void sums_agree_with_their_readings() {
        for (long seed = 0; seed < 200; seed++) {
            List<Sample> readings = plain(new Random(seed));

            var sums = new TreeMap<Instant, Sample>();
            PackedDay.empty().with(readings).summed(QUARTER).samples().forEach(sum -> sums.put(sum.at(), sum));

            for (Sample reading : readings) {
                Sample sum = sums.floorEntry(reading.at()).getValue();
                assertThat(reading.mean()).as("seed " + seed).isBetween(sum.min(), sum.max());
                assertThat(Duration.between(sum.at(), reading.at())).isLessThan(QUARTER);
            }
            assertThat(sums.values().stream().mapToInt(Sample::count).sum()).isEqualTo(readings.size());
        }
    }

    @Test
    void closes_a_step_that_is_summed_up_and_takes_readings_where_there_is_none() {
        PackedDay day = PackedDay.empty().with(List.of(Sample.one(DAY, 1))).summed(QUARTER);

        PackedDay more = day.with(List.of(Sample.one(DAY.plusSeconds(60), 9), Sample.one(DAY.plusSeconds(1000), 2)));

        assertThat(day.takes(DAY.plusSeconds(60))).isFalse();
        assertThat(more.samples())
                .containsExactly(new Sample(DAY, 1, 1, 1, 1), new Sample(DAY.plusSeconds(900), 2, 2, 2, 1));
    }

    @Test
    void takes_few_bytes_for_what_a_tank_does() {
        var random = new Random(7);
        List<Sample> readings = new ArrayList<>();
        double level = 8;
        for (int minute = 0; minute < 1440; minute++) {
            level += 0.005 + random.nextGaussian() * 0.01;
            readings.add(Sample.one(DAY.plusSeconds(60L * minute), Math.round(level * 100) / 100.0));
        }
        PackedDay day = PackedDay.empty().with(readings);

        assertThat(day.bytes().length / 1440.0).isLessThan(1);
        assertThat(day.summed(QUARTER).bytes().length / 96.0).isLessThan(5);
    }

    @Test
    void refuses_bytes_that_are_no_day() {
        assertThatThrownBy(() -> PackedDay.read(new byte[] {1, 2, 3})).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> PackedDay.read(new byte[0])).isInstanceOf(IllegalStateException.class);
    }

    /** Of any kind: none or many, regular or not, decimals or whatever a double can be, with gaps and jumps. */
    private static List<Sample> readings(Random random) {
        List<Sample> readings = new ArrayList<>();
        int kind = random.nextInt(4);
        long millis = random.nextInt(100_000);
        double value = random.nextGaussian() * 100;
        int count = random.nextInt(300);
        for (int i = 0; i < count && millis < Slot.DAY; i++) {
            value += random.nextGaussian();
            double posted = switch (kind) {
                case 0 -> Math.rint(value * 100) / 100 + 0.0;
                case 1 -> value;
                case 2 -> finite(random);
                default -> Math.rint(value * 1e9) / 1e9 + 0.0;
            };
            readings.add(Sample.one(DAY.plusMillis(millis), posted));
            millis += random.nextInt(10) == 0 ? 1 + random.nextInt(3_000_000) : 60_000;
        }
        return readings;
    }

    private static List<Sample> plain(Random random) {
        List<Sample> readings = new ArrayList<>();
        for (int minute = 0; minute < 1440; minute += 1 + random.nextInt(30)) {
            readings.add(Sample.one(DAY.plusSeconds(60L * minute), Math.rint(random.nextGaussian() * 1000) / 10 + 0.0));
        }
        return readings;
    }

    private static double finite(Random random) {
        double any = Double.longBitsToDouble(random.nextLong());
        return Double.isFinite(any) ? any : 1;
    }
}
