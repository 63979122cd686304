package yardlight.escalation.runtime;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.LongPredicate;
import org.junit.jupiter.api.Test;

class RunTimeTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final Duration HOLD = Duration.ofHours(1);

    @Test
    void a_day_is_counted_by_the_clock_of_the_site() {
        // On for the first quarter of each hour, from midnight there.
        RunTime time = play("2026-11-20T06:00:00Z", 24 * 60, minute -> minute % 60 < 15);

        Day day = time.day(LocalDate.parse("2026-11-20")).orElseThrow();

        assertThat(day.share()).isCloseTo(0.25, within(1e-9));
        assertThat(day.known()).isEqualTo(Duration.ofHours(24));
        assertThat(day.longest()).isEqualTo(Duration.ofMinutes(15));
        assertThat(day.starts()).isEqualTo(23);
        assertThat(day.startsPerHour()).isCloseTo(23 / 24.0, within(1e-9));
    }

    /** Day lengths by the time zone database, recomputed: 23 hours on 2026-03-08 and 25 on 2026-11-01 in Chicago. */
    @Test
    void the_days_of_the_clock_change_have_23_and_25_hours() {
        RunTime spring = play("2026-03-08T06:00:00Z", 23 * 60, minute -> true);
        RunTime autumn = play("2026-11-01T05:00:00Z", 25 * 60, minute -> minute < 300);

        Day shorter = spring.day(LocalDate.parse("2026-03-08")).orElseThrow();
        Day longer = autumn.day(LocalDate.parse("2026-11-01")).orElseThrow();

        assertThat(shorter.known()).isEqualTo(Duration.ofHours(23));
        assertThat(shorter.share()).isEqualTo(1);
        assertThat(longer.known()).isEqualTo(Duration.ofHours(25));
        assertThat(longer.share()).isCloseTo(0.2, within(1e-9));
        assertThat(Day.length(LocalDate.parse("2026-03-08"), CHICAGO)).isEqualTo(Duration.ofHours(23));
        assertThat(Day.length(LocalDate.parse("2026-11-01"), CHICAGO)).isEqualTo(Duration.ofHours(25));
    }

    @Test
    void a_run_over_midnight_is_shared_by_both_days() {
        // On from 23:00 to 2:00 there.
        RunTime time = play("2026-11-20T06:00:00Z", 48 * 60, minute -> minute >= 23 * 60 && minute < 26 * 60);

        Day first = time.day(LocalDate.parse("2026-11-20")).orElseThrow();
        Day second = time.day(LocalDate.parse("2026-11-21")).orElseThrow();

        assertThat(first.on()).isEqualTo(Duration.ofHours(1));
        assertThat(first.longest()).isEqualTo(Duration.ofHours(1));
        assertThat(first.starts()).isEqualTo(1);
        assertThat(second.on()).isEqualTo(Duration.ofHours(2));
        assertThat(second.longest()).isEqualTo(Duration.ofHours(2));
        assertThat(second.starts()).isZero();
    }

    @Test
    void the_last_24_hours_roll_with_the_clock() {
        // Twelve hours on, then twelve off, then six on again.
        RunTime time = play("2026-11-20T06:00:00Z", 30 * 60, minute -> minute < 12 * 60 || minute >= 24 * 60);

        Day rolling = time.lastDay(CHICAGO).orElseThrow();

        assertThat(rolling.on()).isEqualTo(Duration.ofHours(12));
        assertThat(rolling.known()).isEqualTo(Duration.ofHours(24));
        assertThat(rolling.longest()).isEqualTo(Duration.ofHours(6));
        assertThat(rolling.starts()).isEqualTo(1);
    }

    @Test
    void time_without_readings_is_not_known_and_does_not_count() {
        RunTime before = play("2026-11-20T06:00:00Z", 120, minute -> true);
        Instant later = Instant.parse("2026-11-20T16:00:00Z");

        RunTime after = before.plus(later, true, CHICAGO, HOLD).plus(later.plusSeconds(600), false, CHICAGO, HOLD);

        Day day = after.day(LocalDate.parse("2026-11-20")).orElseThrow();
        assertThat(day.known()).isEqualTo(Duration.ofMinutes(130));
        assertThat(day.on()).isEqualTo(Duration.ofMinutes(130));
        assertThat(day.starts()).isZero();
        assertThat(after.lastDay(CHICAGO).orElseThrow().known()).isEqualTo(Duration.ofMinutes(130));
        assertThat(after.running()).contains(false);
        assertThat(after.since()).contains(later.plusSeconds(600));
    }

    @Test
    void readings_that_come_late_change_nothing() {
        RunTime time = play("2026-11-20T06:00:00Z", 120, minute -> true);

        assertThat(time.plus(Instant.parse("2026-11-20T06:30:00Z"), false, CHICAGO, HOLD))
                .isEqualTo(time);
    }

    @Test
    void of_what_never_ran_nothing_is_known() {
        assertThat(RunTime.NONE.running()).isEmpty();
        assertThat(RunTime.NONE.since()).isEmpty();
        assertThat(RunTime.NONE.lastDay(CHICAGO)).isEmpty();
        assertThat(RunTime.NONE.compared(CHICAGO, 14)).isEmpty();
    }

    @Test
    void it_stays_small_however_long_and_however_fast_it_runs() {
        RunTime time = play("2026-10-01T05:00:00Z", 40 * 24 * 60, minute -> minute % 2 == 0);

        assertThat(time.segments()).hasSizeLessThanOrEqualTo(RunTime.SEGMENTS);
        assertThat(time.days()).hasSize(RunTime.DAYS);
        assertThat(time.lastDay(CHICAGO).orElseThrow().share()).isCloseTo(0.5, within(0.01));
    }

    @Test
    void it_is_remembered_as_numbers() {
        RunTime time = play("2026-11-20T06:00:00Z", 50 * 60, minute -> minute % 90 < 40);

        assertThat(Numbers.read(Numbers.of(time))).isEqualTo(time);
        assertThat(Numbers.read(Numbers.of(RunTime.NONE))).isEqualTo(RunTime.NONE);
        assertThat(Numbers.read(java.util.List.of())).isEqualTo(RunTime.NONE);
    }

    /** 58 and 73 of 100 are ordinary days of an injection pump: common practice, no published source. */
    @Test
    void a_day_is_compared_with_the_median_of_up_to_fourteen_before_it() {
        long day = 24 * 60;
        RunTime time = play(
                "2026-11-01T05:00:00Z",
                20 * day,
                minute -> minute % 60 < (minute >= 19 * day ? 20 : minute / day % 2 == 0 ? 35 : 37));

        Comparison now = time.compared(CHICAGO, 14).orElseThrow();

        assertThat(now.days()).isEqualTo(14);
        assertThat(now.usual()).isCloseTo(0.6, within(0.02));
        assertThat(now.share()).isCloseTo(20 / 60.0, within(0.02));
        assertThat(now.share()).isLessThan(now.low(Unusual.USUAL));
        assertThat(now.high(Unusual.USUAL)).isBetween(0.7, 0.75);
    }

    @Test
    void four_earlier_days_are_too_few() {
        assertThat(Comparison.of(0.1, new double[] {0.6, 0.6, 0.6, 0.6})).isEmpty();
        assertThat(Comparison.of(0.1, new double[] {0.6, 0.6, 0.6, 0.6, 0.6}))
                .isEqualTo(Optional.of(new Comparison(0.1, 0.6, Comparison.STEADIEST, 5)));
    }

    @Test
    void one_odd_day_does_not_make_the_others_unusual() {
        Comparison odd = Comparison.of(0.6, new double[] {0.6, 0.61, 0.59, 0.0, 0.6, 0.62})
                .orElseThrow();

        assertThat(odd.usual()).isCloseTo(0.6, within(0.01));
        assertThat(odd.low(Unusual.USUAL)).isBetween(0.48, 0.51);
    }

    @Test
    void what_is_never_unusual_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Unusual(1, 5));
        assertThatIllegalArgumentException().isThrownBy(() -> new Unusual(0.1, 0));
    }

    /** A reading each minute, the last one at the end. */
    private static RunTime play(String start, long minutes, LongPredicate on) {
        RunTime time = RunTime.NONE;
        Instant from = Instant.parse(start);
        for (long minute = 0; minute <= minutes; minute++) {
            time = time.plus(from.plus(Duration.ofMinutes(minute)), on.test(minute), CHICAGO, HOLD);
        }
        return time;
    }
}
