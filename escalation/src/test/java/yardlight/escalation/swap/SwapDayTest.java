package yardlight.escalation.swap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;

class SwapDayTest {

    private static final LocalDate WEDNESDAY = LocalDate.parse("2026-11-25");

    @Test
    void a_day_of_the_week_is_the_next_one_or_today() {
        assertThat(SwapDay.weekday(DayOfWeek.FRIDAY, false).from(WEDNESDAY)).isEqualTo("2026-11-27");
        assertThat(SwapDay.weekday(DayOfWeek.WEDNESDAY, false).from(WEDNESDAY)).isEqualTo("2026-11-25");
        assertThat(SwapDay.weekday(DayOfWeek.TUESDAY, false).from(WEDNESDAY)).isEqualTo("2026-12-01");
    }

    @Test
    void a_date_that_has_passed_is_that_of_the_next_year() {
        assertThat(SwapDay.date(MonthDay.of(12, 24), false).from(WEDNESDAY)).isEqualTo("2026-12-24");
        assertThat(SwapDay.date(MonthDay.of(1, 2), false).from(WEDNESDAY)).isEqualTo("2027-01-02");
    }

    @Test
    void today_and_tomorrow_are_near() {
        assertThat(SwapDay.near(SwapDay.Kind.TODAY, true).from(WEDNESDAY)).isEqualTo("2026-11-25");
        assertThat(SwapDay.near(SwapDay.Kind.TOMORROW, false).from(WEDNESDAY)).isEqualTo("2026-11-26");
    }

    @Test
    void a_day_goes_from_handover_to_handover_and_a_night_from_seven_to_seven() {
        SwapDay day = SwapDay.weekday(DayOfWeek.WEDNESDAY, false);
        SwapDay night = SwapDay.weekday(DayOfWeek.WEDNESDAY, true);

        assertThat(day.of(WEDNESDAY, LocalTime.of(6, 30)).from()).isEqualTo("2026-11-25T06:30");
        assertThat(day.of(WEDNESDAY, LocalTime.of(6, 30)).to()).isEqualTo("2026-11-26T06:30");
        assertThat(night.of(WEDNESDAY, LocalTime.of(6, 30)).from()).isEqualTo("2026-11-25T19:00");
        assertThat(night.of(WEDNESDAY, LocalTime.of(6, 30)).to()).isEqualTo("2026-11-26T07:00");
    }

    @Test
    void there_is_no_february_30() {
        assertThatThrownBy(() -> new SwapDay(SwapDay.Kind.DATE, 30, 2, false)).isInstanceOf(DateTimeException.class);
    }
}
