package yardlight.escalation.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

class GapsTest {

    private static final Instant NOON = Fixtures.at("2026-11-27T12:00");
    private static final Duration WEEK = Duration.ofDays(7);
    private static final List<QuietHours> NIGHTS =
            List.of(QuietHours.daily(LocalTime.of(21, 0), LocalTime.of(6, 0), Fixtures.CHICAGO, Priority.HIGH));

    private static Contact contact(String id, List<QuietHours> quiet) {
        return new Contact(
                id, id, Fixtures.CHICAGO, Language.EN, List.of(new Line("mail", id + "@ranch.example")), quiet, 20);
    }

    private static Setup setup(List<Contact> contacts, List<Roster> rosters, String... calls) {
        var ladder = new Ladder(
                "l", Ladder.EndsWhen.ACKNOWLEDGED, List.of(new Rung(List.of(calls), Duration.ofMinutes(10), 1)), 0);
        var site = new Site("s", "S", Fixtures.CHICAGO, "l");
        return new Setup(List.of(site), List.of(), List.of(), contacts, rosters, List.of(ladder));
    }

    private static Coverage week(Setup setup) {
        return new Coverage(setup, Set.of(), NOON, NOON.plus(WEEK));
    }

    private static Gap gap(String from, String to, Priority... priorities) {
        return new Gap(Fixtures.at(from), Fixtures.at(to), EnumSet.copyOf(List.of(priorities)));
    }

    @Test
    void are_where_an_alarm_is_called_to_nobody_at_once_on_random_setups() {
        int found = 0;
        for (int seed = 0; seed < 200; seed++) {
            LocalDateTime day = LocalDateTime.parse("2026-10-31T18:00");
            Setup setup = RandomSetup.draw(new Random(seed), day);
            Instant from = day.toInstant(ZoneOffset.UTC);
            var coverage = new Coverage(setup, Set.of(), from, from.plus(WEEK));
            List<Gap> gaps = coverage.gaps("s");
            for (Priority priority : Priority.values()) {
                assertThat(spans(gaps, priority))
                        .as("setup " + seed + ", " + priority)
                        .isEqualTo(merged(coverage.of("s", priority)));
            }
            found += gaps.size();
        }
        assertThat(found).isGreaterThan(200);
    }

    private static List<Gaps.Span> spans(List<Gap> gaps, Priority priority) {
        return gaps.stream()
                .filter(gap -> gap.priorities().contains(priority))
                .map(gap -> new Gaps.Span(gap.from(), gap.to()))
                .toList();
    }

    private static List<Gaps.Span> merged(List<Stretch> stretches) {
        var spans = new ArrayList<Gaps.Span>();
        for (Stretch stretch : stretches) {
            if (stretch.heardAtOnce()) {
                continue;
            }
            Gaps.Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
            if (last != null && last.to().equals(stretch.from())) {
                spans.set(spans.size() - 1, new Gaps.Span(last.from(), stretch.to()));
            } else {
                spans.add(new Gaps.Span(stretch.from(), stretch.to()));
            }
        }
        return spans;
    }

    @Test
    void of_priorities_that_end_together_are_one() {
        List<Gap> gaps =
                week(setup(List.of(contact("ana", NIGHTS)), List.of(), "ana")).gaps("s");

        assertThat(gaps)
                .hasSize(7)
                .startsWith(gap("2026-11-27T21:00", "2026-11-28T06:00", Priority.LOW, Priority.MEDIUM));
        assertThat(Gaps.ahead(gaps)).contains(new Gaps.Ahead(gaps.get(0), 6));
        assertThat(Gaps.ahead(List.of())).isEmpty();
    }

    @Test
    void are_an_hour_shorter_on_the_night_that_lacks_one_and_longer_on_the_night_that_has_it_twice() {
        Setup setup = setup(List.of(contact("ana", NIGHTS)), List.of(), "ana");
        Instant spring = Fixtures.at("2027-03-13T12:00");
        Instant autumn = Fixtures.at("2027-11-06T12:00");

        assertThat(new Coverage(setup, Set.of(), spring, spring.plus(Duration.ofDays(1))).gaps("s"))
                .extracting(Gap::length)
                .containsExactly(Duration.ofHours(8));
        assertThat(new Coverage(setup, Set.of(), autumn, autumn.plus(Duration.ofDays(1))).gaps("s"))
                .extracting(Gap::length)
                .containsExactly(Duration.ofHours(10));
    }

    @Test
    void name_the_highest_priority_first_however_late_it_comes() {
        Gap low = gap("2026-11-27T21:00", "2026-11-28T06:00", Priority.LOW);
        Gap critical = gap("2027-03-01T21:00", "2027-03-02T06:00", Priority.CRITICAL);
        Gap later = gap("2027-04-01T21:00", "2027-04-02T06:00", Priority.HIGH, Priority.CRITICAL);

        assertThat(Gaps.ahead(List.of(low, critical, later))).contains(new Gaps.Ahead(critical, 2));
    }

    @Test
    void that_are_opened_are_those_that_were_none_before() {
        Gap night = gap("2026-11-27T21:00", "2026-11-28T06:00", Priority.LOW, Priority.MEDIUM);
        Gap longer = gap("2026-11-27T20:00", "2026-11-28T07:00", Priority.LOW);

        assertThat(Gaps.opened(List.of(night), List.of(night))).isEmpty();
        assertThat(Gaps.opened(List.of(longer), List.of(night)))
                .containsExactly(gap("2026-11-27T21:00", "2026-11-28T06:00", Priority.MEDIUM));
        assertThat(Gaps.opened(List.of(night), List.of(longer)))
                .containsExactly(
                        gap("2026-11-27T20:00", "2026-11-27T21:00", Priority.LOW),
                        gap("2026-11-28T06:00", "2026-11-28T07:00", Priority.LOW));
        assertThat(Gaps.opened(List.of(), List.of(night))).containsExactly(night);
    }

    @Test
    void say_that_quiet_hours_let_nothing_through() {
        Coverage coverage = week(setup(List.of(contact("ana", NIGHTS)), List.of(), "ana"));

        assertThat(coverage.why("s", coverage.gaps("s").get(0))).containsExactly(Why.QUIET_HOURS);
    }

    @Test
    void say_that_a_relief_sleeps_where_the_one_whose_tour_it_is_would_hear() {
        var roster = new Roster(
                "crew",
                Fixtures.CHICAGO,
                LocalDateTime.parse("2026-11-23T07:00"),
                WEEK,
                List.of("ben"),
                List.of(new Relief(
                        LocalDateTime.parse("2026-11-28T07:00"), LocalDateTime.parse("2026-11-29T07:00"), "ana")));
        Setup setup = setup(
                List.of(contact("ana", NIGHTS), contact("ben", List.of())), List.of(roster), Rung.ROSTER + "crew");
        Coverage coverage = week(setup);

        List<Gap> gaps = coverage.gaps("s");

        assertThat(gaps).containsExactly(gap("2026-11-28T21:00", "2026-11-29T06:00", Priority.LOW, Priority.MEDIUM));
        assertThat(coverage.why("s", gaps.get(0))).containsExactly(Why.RELIEF);
    }

    @Test
    void say_that_a_roster_has_not_begun() {
        var roster = new Roster(
                "crew", Fixtures.CHICAGO, LocalDateTime.parse("2026-11-29T07:00"), WEEK, List.of("ben"), List.of());
        Coverage coverage = week(setup(List.of(contact("ben", List.of())), List.of(roster), Rung.ROSTER + "crew"));

        List<Gap> gaps = coverage.gaps("s");

        assertThat(gaps).containsExactly(gap("2026-11-27T12:00", "2026-11-29T07:00", Priority.values()));
        assertThat(coverage.why("s", gaps.get(0))).containsExactly(Why.ROSTER_EMPTY);
    }

    @Test
    void say_more_than_one_reason_where_it_changes_within_them() {
        var roster = new Roster(
                "crew", Fixtures.CHICAGO, LocalDateTime.parse("2026-11-28T02:00"), WEEK, List.of("ana"), List.of());
        Coverage coverage = week(setup(List.of(contact("ana", NIGHTS)), List.of(roster), Rung.ROSTER + "crew"));

        Gap first = coverage.gaps("s").get(1);

        assertThat(first).isEqualTo(gap("2026-11-27T12:00", "2026-11-28T06:00", Priority.LOW, Priority.MEDIUM));
        assertThat(coverage.why("s", first)).containsExactly(Why.ROSTER_EMPTY, Why.QUIET_HOURS);
    }

    @Test
    void say_that_nobody_has_a_line_and_that_nobody_is_called() {
        var mute = new Contact("ana", "ana", Fixtures.CHICAGO, Language.EN, List.of(), List.of(), 20);
        Coverage coverage = week(setup(List.of(mute), List.of(), "ana"));
        Coverage nobody = week(setup(List.of(), List.of(), Rung.EVERYONE));

        assertThat(coverage.gaps("s")).hasSize(1);
        assertThat(coverage.why("s", coverage.gaps("s").get(0))).containsExactly(Why.NO_LINE);
        assertThat(nobody.why("s", nobody.gaps("s").get(0))).containsExactly(Why.NOBODY);
    }

    @Test
    void are_none_at_a_site_that_is_out_of_service() {
        Setup setup = setup(List.of(), List.of(), Rung.EVERYONE);
        Site closed = new Site("s", "S", Fixtures.CHICAGO, "l", Set.of(), Set.of(), false);
        var out = new Setup(
                List.of(closed),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.copyOf(setup.ladders().values()));

        assertThat(week(setup).gaps("s")).hasSize(1);
        assertThat(week(out).gaps("s")).isEmpty();
        assertThat(week(out).unproven("s")).isEmpty();
    }

    @Test
    void beside_them_are_the_times_in_which_nobody_called_at_once_is_known_to_be_reached() {
        Setup setup = setup(List.of(contact("ana", NIGHTS), contact("ben", List.of())), List.of(), "ana", "ben");
        Instant end = NOON.plus(Duration.ofDays(1));

        Coverage nothing = new Coverage(setup, Set.of(), Set.of(), NOON, end);
        Coverage ben = new Coverage(setup, Set.of(), Set.of("ben"), NOON, end);
        Coverage ana = new Coverage(setup, Set.of(), Set.of("ana"), NOON, end);

        assertThat(nothing.unproven("s")).containsExactly(new Gap(NOON, end, EnumSet.allOf(Priority.class)));
        assertThat(ben.unproven("s")).isEmpty();
        assertThat(ben.of("s", Priority.LOW).get(0).first()).contains(Heard.after("ben", Duration.ZERO));
        assertThat(ana.unproven("s"))
                .containsExactly(gap("2026-11-27T21:00", "2026-11-28T06:00", Priority.LOW, Priority.MEDIUM));
    }

    @Test
    void are_not_looked_for_for_ever() {
        Setup setup = setup(List.of(contact("ana", NIGHTS), contact("ben", NIGHTS)), List.of(), Rung.EVERYONE);

        assertThatThrownBy(() -> new Coverage(setup, Set.of(), Set.of(), NOON, NOON.plus(WEEK), 100).gaps("s"))
                .isInstanceOf(TooMuch.class);
        assertThat(new Coverage(setup, Set.of(), Set.of(), NOON, NOON.plus(WEEK), 10_000).gaps("s"))
                .hasSize(7);
    }

    @Test
    void have_a_length_and_a_priority() {
        assertThatThrownBy(() -> new Gap(NOON, NOON, Set.of(Priority.LOW)))
                .hasMessageStartingWith("gap must have a length and a priority: ");
        assertThatThrownBy(() -> new Gap(NOON, NOON.plusSeconds(1), Set.of()))
                .hasMessageStartingWith("gap must have a length and a priority: ");
    }
}
