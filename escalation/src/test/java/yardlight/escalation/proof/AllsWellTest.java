package yardlight.escalation.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AllsWellTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    private final AllsWell seven = AllsWell.daily(LocalTime.of(7, 0), CHICAGO);

    @Test
    void the_next_one_is_after_the_instant_and_the_latest_one_may_be_at_it() {
        Instant today = Instant.parse("2026-11-25T13:00:00Z");

        assertThat(seven.after(today.minusSeconds(1))).isEqualTo(today);
        assertThat(seven.after(today)).isEqualTo(Instant.parse("2026-11-26T13:00:00Z"));
        assertThat(seven.latest(today)).isEqualTo(today);
        assertThat(seven.latest(today.minusSeconds(1))).isEqualTo(Instant.parse("2026-11-24T13:00:00Z"));
    }

    @Test
    void only_the_named_days_count() {
        var weekly = new AllsWell(LocalTime.of(7, 0), CHICAGO, Set.of(DayOfWeek.MONDAY));
        Instant monday = Instant.parse("2026-11-23T13:00:00Z");

        assertThat(weekly.after(monday)).isEqualTo(Instant.parse("2026-11-30T13:00:00Z"));
        assertThat(weekly.latest(monday.minusSeconds(1))).isEqualTo(Instant.parse("2026-11-16T13:00:00Z"));
    }

    @Test
    void a_time_that_the_night_leaves_out_is_the_first_moment_after_the_gap() {
        AllsWell skipped = AllsWell.daily(LocalTime.of(2, 30), CHICAGO);

        assertThat(skipped.after(Instant.parse("2026-03-08T06:00:00Z")))
                .isEqualTo(Instant.parse("2026-03-08T08:00:00Z"));
    }

    @Test
    void a_time_that_comes_twice_is_the_first_of_the_two() {
        AllsWell twice = AllsWell.daily(LocalTime.of(1, 30), CHICAGO);

        assertThat(twice.after(Instant.parse("2026-11-01T06:00:00Z"))).isEqualTo(Instant.parse("2026-11-01T06:30:00Z"));
        assertThat(twice.after(Instant.parse("2026-11-01T06:30:00Z"))).isEqualTo(Instant.parse("2026-11-02T07:30:00Z"));
    }

    /** Apia had no 30 December 2011; Troll moves its clock by two hours. */
    @ParameterizedTest
    @ValueSource(strings = {"America/Chicago", "Pacific/Apia", "Antarctica/Troll", "Australia/Lord_Howe", "UTC"})
    void there_is_always_a_next_one_and_each_is_the_latest_until_the_next(String zone) {
        for (int hour = 0; hour < 24; hour++) {
            AllsWell daily = AllsWell.daily(LocalTime.of(hour, 30), ZoneId.of(zone));
            Instant at = Instant.parse("2011-01-01T00:00:00Z");
            for (int day = 0; day < 400; day++) {
                Instant next = daily.after(at);

                assertThat(next).isAfter(at);
                assertThat(daily.latest(next)).isEqualTo(next);
                assertThat(daily.latest(daily.after(next).minusNanos(1))).isEqualTo(next);
                at = next;
            }
        }
    }

    @Test
    void without_a_day_it_is_refused() {
        assertThatThrownBy(() -> new AllsWell(LocalTime.NOON, CHICAGO, Set.of()))
                .hasMessage("days must name at least one day of the week: []");
    }
}
