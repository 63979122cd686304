package yardlight.escalation.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.setup.Setup;

/** Coverage by intervals says of every minute what the engine does in that minute: checked minute by minute. */
class CoverageTest {

    private static final int SETUPS = Integer.getInteger("yardlight.coverage.setups", 9);
    private static final Duration WINDOW = Duration.ofHours(30);

    /** The nights of both changes of the clock, and an ordinary one. */
    private static final List<LocalDateTime> DAYS = List.of(
            LocalDateTime.parse("2026-03-07T18:00"),
            LocalDateTime.parse("2026-10-31T18:00"),
            LocalDateTime.parse("2026-06-10T18:00"));

    /** {@code -Dyardlight.coverage.setups=1000} for the long run. */
    @Test
    void is_what_the_engine_does_in_every_minute_of_random_setups() {
        long minutes = 0;
        long stretches = 0;
        for (int seed = 0; seed < SETUPS; seed++) {
            stretches += compare(seed);
            minutes += WINDOW.toMinutes();
        }
        System.out.println(SETUPS + " setups, " + minutes + " minutes in " + stretches + " stretches: none differs");
        assertThat(stretches).isGreaterThan(2L * SETUPS);
    }

    /** Once it looked eight days ahead from the last change and not from the alarm: found by the long run. */
    @Test
    void is_so_where_quiet_hours_go_on_for_longer_than_anybody_waits() {
        assertThat(compare(52)).isPositive();
    }

    private static int compare(int seed) {
        var random = new Random(seed);
        LocalDateTime day = DAYS.get(seed % DAYS.size());
        Setup setup = RandomSetup.draw(random, day);
        Priority priority = Priority.values()[random.nextInt(4)];
        Instant from = day.toInstant(ZoneOffset.UTC);
        List<Stretch> found = new Coverage(setup, Set.of(), from, from.plus(WINDOW)).of("s", priority);
        Instant minute = from;
        for (Stretch stretch : found) {
            assertThat(stretch.from()).as("setup " + seed).isEqualTo(minute);
            while (minute.isBefore(stretch.to())) {
                check(setup, priority, stretch, minute, "setup " + seed + " at " + minute);
                minute = minute.plusSeconds(60);
            }
        }
        assertThat(minute).as("setup " + seed).isEqualTo(from.plus(WINDOW));
        return found.size();
    }

    private static void check(Setup setup, Priority priority, Stretch stretch, Instant minute, String where) {
        List<Rehearsal.Line> told = told(setup, priority, minute);
        Optional<Instant> first = told.stream().findFirst().map(Rehearsal.Line::at);
        assertThat(stretch.first().map(one -> one.when(minute))).as(where).isEqualTo(first);
        first.ifPresent(at -> {
            String contact = stretch.first().orElseThrow().contact();
            assertThat(at(told, at)).as(where).contains(contact);
            Optional<Instant> second = told.stream()
                    .filter(line -> !line.contact().equals(Optional.of(contact)))
                    .findFirst()
                    .map(Rehearsal.Line::at);
            assertThat(stretch.second().map(one -> one.when(minute))).as(where).isEqualTo(second);
            second.ifPresent(next -> assertThat(at(told, next))
                    .as(where)
                    .contains(stretch.second().orElseThrow().contact()));
        });
    }

    private static List<Rehearsal.Line> told(Setup setup, Priority priority, Instant minute) {
        var question =
                new Rehearsal.Question(new AlarmKey("s", "tank", "high"), Optional.of(priority), minute, Map.of());
        return Rehearsal.of(setup, question).stream()
                .filter(line -> line.what().equals("told"))
                .filter(line -> !line.at().isAfter(minute.plus(Walk.LONGEST)))
                .toList();
    }

    private static Set<String> at(List<Rehearsal.Line> told, Instant at) {
        return told.stream()
                .filter(line -> line.at().equals(at))
                .map(line -> line.contact().orElseThrow())
                .collect(Collectors.toSet());
    }

    @Test
    void refuses_a_site_that_is_not_set_up_and_a_time_that_ends_before_it_begins() {
        Instant from = Fixtures.at("2026-11-25T12:00");
        var coverage = new Coverage(Fixtures.theSetup(), Set.of(), from, from.plusSeconds(60));

        assertThatThrownBy(() -> coverage.of("nowhere", Priority.LOW)).hasMessage("site must be set up: nowhere");
        assertThatThrownBy(() -> new Coverage(Fixtures.theSetup(), Set.of(), from, from))
                .hasMessageStartingWith("coverage must end after it begins: ");
    }
}
