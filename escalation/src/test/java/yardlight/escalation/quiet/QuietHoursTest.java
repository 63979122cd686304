package yardlight.escalation.quiet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static yardlight.escalation.Fixtures.CHICAGO;
import static yardlight.escalation.Fixtures.at;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;

class QuietHoursTest {

    private final QuietHours night = daily("22:00", "06:00");

    @Test
    void cover_the_start_and_not_the_end() {
        assertThat(night.covers(at("2026-11-24T21:59"))).isFalse();
        assertThat(night.covers(at("2026-11-24T22:00"))).isTrue();
        assertThat(night.covers(at("2026-11-25T05:59"))).isTrue();
        assertThat(night.covers(at("2026-11-25T06:00"))).isFalse();
    }

    @Test
    void end_on_the_next_morning() {
        assertThat(night.endAfter(at("2026-11-24T22:00"))).isEqualTo(at("2026-11-25T06:00"));
        assertThat(night.endAfter(at("2026-11-25T03:00"))).isEqualTo(at("2026-11-25T06:00"));
    }

    @Test
    void end_at_once_where_they_do_not_cover() {
        Instant noon = at("2026-11-24T12:00");

        assertThat(night.endAfter(noon)).isEqualTo(noon);
    }

    @Test
    void lie_within_a_day_when_they_end_after_they_start() {
        QuietHours siesta = daily("13:00", "15:00");

        assertThat(siesta.covers(at("2026-11-24T14:00"))).isTrue();
        assertThat(siesta.covers(at("2026-11-24T15:00"))).isFalse();
        assertThat(siesta.covers(at("2026-11-24T02:00"))).isFalse();
    }

    @Test
    void may_end_at_midnight() {
        QuietHours evening = daily("20:00", "00:00");

        assertThat(evening.covers(at("2026-11-24T23:59"))).isTrue();
        assertThat(evening.covers(at("2026-11-25T00:00"))).isFalse();
        assertThat(evening.endAfter(at("2026-11-24T21:00"))).isEqualTo(at("2026-11-25T00:00"));
    }

    @Test
    void cross_midnight_into_a_day_that_is_not_listed() {
        QuietHours friday = on(DayOfWeek.FRIDAY);

        assertThat(friday.covers(at("2026-11-27T23:00"))).isTrue();
        assertThat(friday.covers(at("2026-11-28T05:00"))).isTrue();
        assertThat(friday.covers(at("2026-11-28T23:00"))).isFalse();
    }

    @Test
    void do_not_reach_back_into_the_morning_of_a_listed_day() {
        assertThat(on(DayOfWeek.FRIDAY).covers(at("2026-11-27T05:00"))).isFalse();
    }

    @Test
    void last_one_hour_less_on_the_night_the_clock_goes_forward() {
        assertThat(length("2026-03-07T22:00")).isEqualTo(Duration.ofHours(7));
    }

    @Test
    void last_one_hour_more_on_the_night_the_clock_goes_back() {
        assertThat(length("2026-10-31T22:00")).isEqualTo(Duration.ofHours(9));
    }

    @Test
    void that_end_at_a_time_which_the_night_leaves_out_end_at_the_first_moment_after_the_gap() {
        QuietHours early = daily("22:00", "02:30");

        assertThat(early.endAfter(at("2026-03-08T01:00"))).isEqualTo(Instant.parse("2026-03-08T08:00:00Z"));
        assertThat(early.covers(at("2026-03-08T03:00"))).isFalse();
    }

    @Test
    void that_start_in_the_gap_and_end_after_it_are_not_lost() {
        QuietHours early = daily("02:30", "03:15");

        assertThat(early.covers(at("2026-03-08T03:10"))).isTrue();
        assertThat(early.covers(at("2026-03-08T03:15"))).isFalse();
    }

    @Test
    void that_lie_in_the_gap_do_not_take_place_that_night() {
        QuietHours gap = daily("02:00", "03:00");

        assertThat(gap.covers(at("2026-03-08T01:59"))).isFalse();
        assertThat(gap.covers(at("2026-03-08T03:00"))).isFalse();
        assertThat(gap.covers(at("2026-03-09T02:30"))).isTrue();
    }

    @Test
    void at_a_time_that_comes_twice_mean_the_first() {
        QuietHours early = daily("22:00", "01:30");

        assertThat(early.endAfter(at("2026-10-31T23:00"))).isEqualTo(Instant.parse("2026-11-01T06:30:00Z"));
        assertThat(early.covers(Instant.parse("2026-11-01T07:15:00Z"))).isFalse();
    }

    @Test
    void count_in_their_own_zone() {
        var denver =
                QuietHours.daily(LocalTime.of(22, 0), LocalTime.of(6, 0), ZoneId.of("America/Denver"), Priority.HIGH);

        assertThat(denver.covers(at("2026-11-24T22:30"))).isFalse();
        assertThat(denver.covers(at("2026-11-25T06:30"))).isTrue();
    }

    @Test
    void hold_what_is_below_the_priority_that_they_let_through() {
        Instant late = at("2026-11-24T23:00");

        assertThat(night.holds(Priority.MEDIUM, late)).isTrue();
        assertThat(night.holds(Priority.HIGH, late)).isFalse();
        assertThat(night.holds(Priority.CRITICAL, late)).isFalse();
        assertThat(night.holds(Priority.LOW, at("2026-11-24T12:00"))).isFalse();
    }

    @Test
    void refuse_to_start_and_end_at_the_same_time() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> daily("22:00", "22:00"))
                .withMessage("quiet hours must not start and end at the same time: 22:00");
    }

    @Test
    void refuse_to_start_on_no_day() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new QuietHours(LocalTime.of(22, 0), LocalTime.of(6, 0), CHICAGO, Priority.HIGH, Set.of()))
                .withMessage("quiet hours must start on at least one day of the week: []");
    }

    private Duration length(String start) {
        return Duration.between(at(start), night.endAfter(at(start)));
    }

    private static QuietHours daily(String from, String to) {
        return QuietHours.daily(LocalTime.parse(from), LocalTime.parse(to), CHICAGO, Priority.HIGH);
    }

    private static QuietHours on(DayOfWeek day) {
        return new QuietHours(LocalTime.of(22, 0), LocalTime.of(6, 0), CHICAGO, Priority.HIGH, EnumSet.of(day));
    }
}
