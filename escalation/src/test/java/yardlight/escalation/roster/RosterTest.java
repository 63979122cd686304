package yardlight.escalation.roster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static yardlight.escalation.Fixtures.CHICAGO;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RosterTest {

    /** Week about from Monday 2026-10-12 07:00, so that a change of the clock lies in it. */
    private final Roster weeks = roster("2026-10-12T07:00", "P7D");

    @Test
    void nobody_is_on_call_before_the_start() {
        assertThat(weeks.onCall(at("2026-10-12T06:59"))).isEmpty();
        assertThat(weeks.nextHandover(at("2026-10-12T06:59"))).isEqualTo(at("2026-10-12T07:00"));
        assertThat(weeks.nextHandover(at("2020-01-01T00:00"))).isEqualTo(at("2026-10-12T07:00"));
    }

    @Test
    void a_tour_includes_its_start_and_not_its_end() {
        assertThat(weeks.onCall(at("2026-10-12T07:00"))).contains("ana");
        assertThat(weeks.onCall(at("2026-10-19T06:59"))).contains("ana");
        assertThat(weeks.onCall(at("2026-10-19T07:00"))).contains("ben");
    }

    @Test
    void the_order_begins_again_for_ever() {
        assertThat(weeks.onCall(at("2026-10-26T07:00"))).contains("cem");
        assertThat(weeks.onCall(at("2026-11-02T07:00"))).contains("ana");
        assertThat(weeks.onCall(at("2046-10-08T07:00"))).contains(turn(at("2046-10-08T07:00")));
    }

    @Test
    void a_handover_keeps_its_time_on_the_wall_through_a_change_of_the_clock() {
        Instant before = at("2026-10-26T07:00");

        Instant next = weeks.nextHandover(before);

        assertThat(next).isEqualTo(at("2026-11-02T07:00"));
        assertThat(Duration.between(before, next)).isEqualTo(Duration.ofDays(7).plusHours(1));
    }

    @Test
    void the_next_handover_is_after_the_instant_and_not_at_it() {
        assertThat(weeks.nextHandover(at("2026-10-19T06:59"))).isEqualTo(at("2026-10-19T07:00"));
        assertThat(weeks.nextHandover(at("2026-10-19T07:00"))).isEqualTo(at("2026-10-26T07:00"));
    }

    @Test
    void a_handover_that_the_night_leaves_out_takes_place_at_the_first_moment_after_the_gap() {
        Roster days = roster("2026-03-06T02:30", "P1D");

        assertThat(days.nextHandover(at("2026-03-07T12:00"))).isEqualTo(Instant.parse("2026-03-08T08:00:00Z"));
        assertThat(days.onCall(Instant.parse("2026-03-08T07:59:59Z"))).contains("ben");
        assertThat(days.onCall(Instant.parse("2026-03-08T08:00:00Z"))).contains("cem");
        assertThat(days.nextHandover(at("2026-03-08T12:00"))).isEqualTo(at("2026-03-09T02:30"));
    }

    @Test
    void a_handover_at_a_time_that_comes_twice_takes_place_at_the_first() {
        Roster days = roster("2026-10-30T01:30", "P1D");

        assertThat(days.nextHandover(at("2026-10-31T12:00"))).isEqualTo(Instant.parse("2026-11-01T06:30:00Z"));
        assertThat(days.onCall(Instant.parse("2026-11-01T07:15:00Z"))).contains("cem");
    }

    /** Every minute of both nights: the tour changes at handovers and nowhere else, and somebody always has one. */
    @ParameterizedTest
    @CsvSource({"PT30M", "PT45M", "PT1H", "PT90M", "PT12H", "P1D"})
    void somebody_is_on_call_in_every_minute_of_the_nights_that_change_the_clock(String tour) {
        for (String evening : List.of("2026-03-07T20:00", "2026-10-31T20:00")) {
            Roster roster = roster(evening, tour);
            Instant next = roster.nextHandover(at(evening));
            String now = "ana";
            for (Instant minute = at(evening);
                    minute.isBefore(at(evening).plus(Duration.ofHours(40)));
                    minute = minute.plusSeconds(60)) {
                if (!minute.isBefore(next)) {
                    assertThat(minute).isEqualTo(next);
                    next = roster.nextHandover(minute);
                    now = roster.onCall(minute).orElseThrow();
                }
                assertThat(roster.onCall(minute)).as("%s", minute).contains(now);
                assertThat(roster.nextHandover(minute)).isEqualTo(next);
            }
        }
    }

    @Test
    void tours_that_lie_wholly_in_the_gap_are_passed_over_and_the_order_goes_on() {
        Roster halves = roster("2026-03-08T01:00", "PT30M");

        assertThat(halves.onCall(at("2026-03-08T01:30"))).contains("ben");
        assertThat(halves.onCall(at("2026-03-08T03:00"))).contains("ben");
        assertThat(halves.onCall(at("2026-03-08T03:30"))).contains("cem");
    }

    @Test
    void a_relief_stands_in_from_its_start_until_just_before_its_end() {
        Roster relieved = roster("2026-10-12T07:00", "P7D", relief("2026-10-13T18:00", "2026-10-14T06:00", "ben"));

        assertThat(relieved.onCall(at("2026-10-13T17:59"))).contains("ana");
        assertThat(relieved.onCall(at("2026-10-13T18:00"))).contains("ben");
        assertThat(relieved.onCall(at("2026-10-14T05:59"))).contains("ben");
        assertThat(relieved.onCall(at("2026-10-14T06:00"))).contains("ana");
    }

    @Test
    void a_relief_moves_no_handover() {
        Roster relieved = roster("2026-10-12T07:00", "P7D", relief("2026-10-18T07:00", "2026-10-20T07:00", "cem"));

        assertThat(relieved.nextHandover(at("2026-10-18T12:00"))).isEqualTo(at("2026-10-19T07:00"));
        assertThat(relieved.onCall(at("2026-10-20T07:00"))).contains("ben");
    }

    @Test
    void of_two_reliefs_at_once_the_later_in_the_list_holds() {
        Roster relieved = roster(
                "2026-10-12T07:00",
                "P7D",
                relief("2026-10-13T00:00", "2026-10-15T00:00", "ben"),
                relief("2026-10-14T00:00", "2026-10-16T00:00", "cem"));

        assertThat(relieved.onCall(at("2026-10-13T12:00"))).contains("ben");
        assertThat(relieved.onCall(at("2026-10-14T12:00"))).contains("cem");
        assertThat(relieved.onCall(at("2026-10-15T12:00"))).contains("cem");
    }

    @Test
    void a_relief_holds_before_the_first_tour_too() {
        Roster relieved = roster("2026-10-12T07:00", "P7D", relief("2026-10-11T07:00", "2026-10-12T07:00", "cem"));

        assertThat(relieved.onCall(at("2026-10-11T12:00"))).contains("cem");
    }

    @Test
    void refuses_a_tour_without_length_an_empty_order_and_a_relief_that_ends_first() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> roster("2026-10-12T07:00", "PT0S"))
                .withMessage("tour must be positive: PT0S");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new Roster("crew", CHICAGO, LocalDateTime.MIN, Duration.ofDays(1), List.of(), List.of()))
                .withMessage("roster must have at least one contact in its order: crew");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> relief("2026-10-12T07:00", "2026-10-12T07:00", "ben"))
                .withMessage("relief must end after it starts: 2026-10-12T07:00 to 2026-10-12T07:00");
    }

    /** Counted in whole local weeks, another way than the roster's. */
    private static String turn(Instant instant) {
        long weeks = ChronoUnit.WEEKS.between(
                LocalDateTime.parse("2026-10-12T07:00"), LocalDateTime.ofInstant(instant, CHICAGO));
        return List.of("ana", "ben", "cem").get((int) (weeks % 3));
    }

    private static Relief relief(String from, String to, String contact) {
        return new Relief(LocalDateTime.parse(from), LocalDateTime.parse(to), contact);
    }

    private static Roster roster(String start, String tour, Relief... reliefs) {
        return new Roster(
                "crew",
                CHICAGO,
                LocalDateTime.parse(start),
                Duration.parse(tour),
                List.of("ana", "ben", "cem"),
                Arrays.asList(reliefs));
    }
}
