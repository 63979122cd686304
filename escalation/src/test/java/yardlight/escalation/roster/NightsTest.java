package yardlight.escalation.roster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ana and Ben day about from 2026-11-23 07:00. */
class NightsTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    private final Nights nights = new Nights(LocalTime.of(19, 0), LocalTime.of(7, 0));

    @Test
    void each_night_is_had_by_who_is_on() {
        assertThat(nights.count(roster("07:00", Duration.ofDays(1)), day("2026-11-23"), day("2026-11-28")))
                .containsExactly(entry("ana", 3), entry("ben", 2));
    }

    @Test
    void before_the_first_tour_nobody_has_one() {
        assertThat(nights.count(roster("07:00", Duration.ofDays(1)), day("2026-11-20"), day("2026-11-23")))
                .isEmpty();
    }

    /** Handover at 23:00: of the night of the 23rd Ben has eight hours and Ana four; of that of the 24th the other way round. */
    @Test
    void a_night_that_changes_hands_is_had_by_who_has_the_longer_part() {
        assertThat(nights.count(roster("23:00", Duration.ofDays(1)), day("2026-11-24"), day("2026-11-25")))
                .containsExactly(entry("ben", 1));
    }

    @Test
    void of_equal_parts_the_first_by_name_has_it() {
        assertThat(nights.count(roster("01:00", Duration.ofDays(1)), day("2026-11-23"), day("2026-11-24")))
                .containsExactly(entry("ana", 1));
        assertThat(nights.count(roster("01:00", Duration.ofDays(1)), day("2026-11-24"), day("2026-11-25")))
                .containsExactly(entry("ana", 1));
    }

    @Test
    void who_stands_in_has_the_night() {
        Roster roster = roster("07:00", Duration.ofDays(7))
                .with(new Relief(
                        LocalDateTime.parse("2026-11-27T19:00"), LocalDateTime.parse("2026-11-28T07:00"), "ben"));

        assertThat(nights.count(roster, day("2026-11-23"), day("2026-11-30")))
                .containsExactly(entry("ana", 6), entry("ben", 1));
    }

    private static LocalDate day(String day) {
        return LocalDate.parse(day);
    }

    private static Roster roster(String handover, Duration tour) {
        return new Roster(
                "crew",
                CHICAGO,
                LocalDate.parse("2026-11-23").atTime(LocalTime.parse(handover)),
                tour,
                List.of("ana", "ben"),
                List.of());
    }
}
