package yardlight.escalation.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Flood;

/**
 * Rates and floods against the traces that follow from the rules of ISA-18.2 ("starts when the rate passes 10 in 10 min, ends
 * when below 5") as they are quoted in courses (read second hand; the traces are derived and recomputed). The standard is
 * quoted both with "10 or more" and with "more than 10".
 */
class RatesAgainstTest {

    private static final Instant ZERO = Instant.parse("2026-11-01T00:00:00Z");
    private static final Flood.Numbers TEN_OR_MORE = Flood.Numbers.USUAL;
    private static final Flood.Numbers MORE_THAN_TEN = new Flood.Numbers(11, 5, Duration.ofMinutes(10));

    /** So many alarms, so many seconds apart. */
    private static List<Instant> alarms(int first, int apart, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> ZERO.plusSeconds(first + (long) i * apart))
                .toList();
    }

    private static Span span(int from, int to) {
        return new Span(ZERO.plusSeconds(from), ZERO.plusSeconds(to));
    }

    @Test
    void ten_alarms_a_minute_apart_are_a_flood_of_six_minutes_or_none() {
        assertThat(Rates.floods(alarms(0, 60, 10), TEN_OR_MORE)).containsExactly(span(540, 900));
        assertThat(Rates.floods(alarms(0, 60, 10), MORE_THAN_TEN)).isEmpty();
    }

    @Test
    void an_eleventh_makes_it_a_minute_longer_and_still_none_of_more_than_ten() {
        assertThat(Rates.floods(alarms(0, 60, 11), TEN_OR_MORE)).containsExactly(span(540, 960));
        assertThat(Rates.floods(alarms(0, 60, 11), MORE_THAN_TEN)).isEmpty();
    }

    @Test
    void twenty_alarms_every_half_minute_are_a_flood_by_both() {
        assertThat(Rates.floods(alarms(0, 30, 20), TEN_OR_MORE)).containsExactly(span(270, 1050));
        assertThat(Rates.floods(alarms(0, 30, 20), MORE_THAN_TEN)).containsExactly(span(300, 1050));
    }

    @Test
    void a_flood_that_lies_across_the_border_of_fixed_periods_is_found() {
        List<Instant> alarms = alarms(300, 60, 10);

        assertThat(Rates.above(alarms, 9, span(0, 1200))).isZero();
        assertThat(Rates.peak(alarms)).isEqualTo(10);
        assertThat(Rates.floods(alarms, TEN_OR_MORE)).containsExactly(span(840, 1200));
    }

    @Test
    void two_floods_are_two() {
        List<Instant> alarms = java.util.stream.Stream.concat(alarms(0, 30, 20).stream(), alarms(7200, 60, 10).stream())
                .toList();

        assertThat(Rates.floods(alarms, TEN_OR_MORE)).containsExactly(span(270, 1050), span(7740, 8100));
    }

    /** 1 per 10 min = 144 a day, 150 a day = 6.25 an hour (recomputed). */
    @Test
    void one_in_ten_minutes_is_144_a_day() {
        Span day = span(0, 86_400);

        assertThat(Rates.average(144, day)).isEqualTo(1.0, within(1e-9));
        assertThat(Rates.average(150, day) * 6).isEqualTo(6.25, within(1e-9));
        assertThat(Rates.average(288, day)).isEqualTo(2.0, within(1e-9));
    }

    /** HSE information sheet CHIS6: 275 alarms in the last 11 minutes at Milford Haven (read). */
    @Test
    void the_last_minutes_of_milford_haven_pass_every_target() {
        List<Instant> alarms = IntStream.range(0, 275)
                .mapToObj(i -> ZERO.plusMillis(i * 660_000L / 275))
                .toList();

        assertThat(Rates.average(275, span(0, 660))).isEqualTo(250, within(0.1));
        assertThat(Rates.peak(alarms)).isEqualTo(250);
        assertThat(Rates.above(alarms, 10, span(0, 1200))).isEqualTo(1.0);
    }

    @Test
    void the_part_of_ten_minutes_with_more_than_ten_does_not_count_ten() {
        assertThat(Rates.above(alarms(0, 60, 10), 10, span(0, 6000))).isZero();
        assertThat(Rates.above(alarms(0, 50, 11), 10, span(0, 6000))).isEqualTo(0.1, within(1e-9));
    }
}
