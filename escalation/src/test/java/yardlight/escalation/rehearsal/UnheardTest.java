package yardlight.escalation.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.CHICAGO;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.aBox;
import static yardlight.escalation.Fixtures.aSite;
import static yardlight.escalation.Fixtures.ana;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.ben;
import static yardlight.escalation.Fixtures.calling;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;

class UnheardTest {

    private static final Duration WEEK = Duration.ofDays(7);
    private static final Instant WEDNESDAY = at("2026-11-25T12:00");

    @Test
    void is_nothing_when_somebody_is_never_quiet() {
        assertThat(unheard(calling(ladder("ana", "ben")), Priority.MEDIUM, WEDNESDAY))
                .isEmpty();
    }

    @Test
    void is_every_night_when_everybody_on_the_ladder_sleeps() {
        List<Unheard.Span> spans = unheard(calling(ladder("ana")), Priority.MEDIUM, WEDNESDAY);

        assertThat(spans)
                .hasSize(7)
                .startsWith(new Unheard.Span(at("2026-11-25T21:00"), at("2026-11-26T06:00"), Rehearsal.Ear.LATER));
    }

    @Test
    void is_nothing_for_a_priority_that_gets_through() {
        assertThat(unheard(calling(ladder("ana")), Priority.HIGH, WEDNESDAY)).isEmpty();
    }

    @Test
    void is_the_time_before_a_roster_begins() {
        var roster = new Roster(
                "crew",
                CHICAGO,
                LocalDateTime.parse("2026-11-27T07:00"),
                Duration.ofDays(7),
                List.of("ben"),
                List.of(new Relief(
                        LocalDateTime.parse("2026-11-26T00:00"), LocalDateTime.parse("2026-11-26T12:00"), "ben")));

        List<Unheard.Span> spans =
                unheard(setup(List.of(roster), ladder("roster:crew"), Timing.PLAIN), Priority.LOW, WEDNESDAY);

        assertThat(spans)
                .containsExactly(
                        new Unheard.Span(WEDNESDAY, at("2026-11-26T00:00"), Rehearsal.Ear.NONE),
                        new Unheard.Span(at("2026-11-26T12:00"), at("2026-11-27T07:00"), Rehearsal.Ear.NONE));
    }

    @Test
    void is_the_whole_week_when_every_line_is_stopped() {
        Set<AlarmKey> stops = Set.of(Stop.key("ben", "5755550102@txt.example"));

        List<Unheard.Span> spans =
                Unheard.of(calling(ladder("ben")), question(Priority.LOW, WEDNESDAY), WEDNESDAY.plus(WEEK), stops);

        assertThat(spans).containsExactly(new Unheard.Span(WEDNESDAY, WEDNESDAY.plus(WEEK), Rehearsal.Ear.NONE));
    }

    /** The week in which the clocks go forward. */
    @Test
    void is_what_a_rehearsal_of_every_minute_says() {
        Setup setup = setup(List.of(), ladder("ana"), delayed(Duration.ofMinutes(7)));

        compare(setup, at("2027-03-10T03:17"), Duration.ofMinutes(1));
    }

    static Stream<Long> seeds() {
        return Stream.iterate(1L, seed -> seed + 1).limit(12);
    }

    /** Whatever the seed: people of two zones, rosters within rosters, the weeks in which the clocks change. */
    @ParameterizedTest
    @MethodSource("seeds")
    void is_what_a_rehearsal_of_every_seventeenth_minute_says(long seed) {
        var chance = new Random(seed);
        Instant from = at(chance.nextBoolean() ? "2026-10-28T12:00" : "2027-03-10T03:17");
        List<Roster> rosters =
                List.of(roster("crew", chance, "ana", "roster:relief", "cleo"), roster("relief", chance, "ben", "dov"));
        List<Contact> people = List.of(
                sleeper("ana", CHICAGO, chance),
                sleeper("ben", CHICAGO, chance),
                sleeper("cleo", ZoneId.of("America/New_York"), chance),
                sleeper("dov", ZoneId.of("America/Phoenix"), chance));
        Ladder ladder = chance.nextBoolean() ? ladder("roster:crew") : ladder("roster:crew", "cleo");
        Point tank = tank(delayed(Duration.ofMinutes(chance.nextInt(0, 100))));
        var setup = new Setup(List.of(aSite()), List.of(aBox()), List.of(tank), people, rosters, List.of(ladder));

        compare(setup, from, Duration.ofMinutes(17));
    }

    private static void compare(Setup setup, Instant from, Duration step) {
        List<Unheard.Span> spans = unheard(setup, Priority.MEDIUM, from);
        var wrong = new ArrayList<String>();

        for (Instant at = from; at.isBefore(from.plus(WEEK)); at = at.plus(step)) {
            Instant minute = at;
            Rehearsal.Ear found = spans.stream()
                    .filter(span -> !minute.isBefore(span.from()) && minute.isBefore(span.to()))
                    .map(Unheard.Span::ear)
                    .findFirst()
                    .orElse(Rehearsal.Ear.OPEN);
            Rehearsal.Ear played = played(setup, minute);
            if (found != played) {
                wrong.add(minute.atZone(CHICAGO) + ": " + found + " instead of " + played);
            }
        }

        assertThat(wrong).isEmpty();
    }

    /** By the whole rehearsal up to its first line. */
    private static Rehearsal.Ear played(Setup setup, Instant at) {
        List<Rehearsal.Line> lines = Rehearsal.of(setup, question(Priority.MEDIUM, at), Set.of(), 1);
        List<String> first = lines.stream()
                .filter(line -> line.at().equals(lines.get(0).at()))
                .map(Rehearsal.Line::what)
                .toList();
        if (first.contains("told")) {
            return Rehearsal.Ear.OPEN;
        }
        return first.contains("held") ? Rehearsal.Ear.LATER : Rehearsal.Ear.NONE;
    }

    private static List<Unheard.Span> unheard(Setup setup, Priority priority, Instant from) {
        return Unheard.of(setup, question(priority, from), from.plus(WEEK), Set.of());
    }

    private static Rehearsal.Question question(Priority priority, Instant at) {
        return new Rehearsal.Question(TANK, Optional.of(priority), at, Map.of());
    }

    private static Setup setup(List<Roster> rosters, Ladder ladder, Timing timing) {
        return new Setup(
                List.of(aSite()),
                List.of(aBox()),
                List.of(tank(timing)),
                List.of(ana(), ben()),
                rosters,
                List.of(ladder));
    }

    private static Point tank(Timing timing) {
        return new Point(
                TANK.point(),
                TANK.site(),
                "WATER TANK",
                Optional.empty(),
                Optional.of(Priority.MEDIUM),
                timing,
                Set.of(),
                true);
    }

    private static Timing delayed(Duration onDelay) {
        return new Timing(onDelay, Duration.ZERO, false, Optional.empty(), Nuisance.Numbers.USUAL);
    }

    private static Ladder ladder(String... calls) {
        List<Rung> rungs = Stream.of(calls)
                .map(call -> new Rung(List.of(call), Duration.ofMinutes(5), 2))
                .toList();
        return new Ladder("night", Ladder.EndsWhen.ACKNOWLEDGED, rungs, 1);
    }

    private static Roster roster(String id, Random chance, String... order) {
        LocalDateTime start = LocalDateTime.parse("2026-10-27T02:30").plusMinutes(chance.nextInt(0, 4000));
        return new Roster(
                id,
                CHICAGO,
                start,
                Duration.ofMinutes(chance.nextInt(60, 3000)),
                List.of(order),
                List.of(new Relief(start.plusHours(20), start.plusHours(20 + chance.nextInt(1, 60)), "ben")));
    }

    private static Contact sleeper(String id, ZoneId zone, Random chance) {
        LocalTime from = LocalTime.of(chance.nextInt(24), chance.nextInt(60));
        LocalTime to = from.plusMinutes(chance.nextInt(60, 1300));
        return new Contact(
                id,
                id,
                zone,
                Language.EN,
                List.of(new Line("sms-mail", "5755550103@txt.example")),
                List.of(QuietHours.daily(from, to, zone, Priority.HIGH)),
                20);
    }
}
