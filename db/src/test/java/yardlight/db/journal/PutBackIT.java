package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.CountingDataSource;
import yardlight.db.TestDatabase;
import yardlight.escalation.Decision;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** A site that is put back into the setup: its points were read before, and are waited for from then on. */
class PutBackIT {

    private static final Instant NOW = Fixtures.at("2026-11-25T01:00");

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void has_its_points_watched_again_and_asks_for_many_in_as_many_statements_as_for_one(TestDatabase database) {
        DataSource source = database.newDataSource();
        var counting = new CountingDataSource(source);
        try (var before = new Journal(source);
                var after = new Journal(counting.proxy())) {
            after.begin().close();
            takenOut(before, with(1), NOW);
            long one = putBack(after, with(1), NOW.plusSeconds(120), counting);
            takenOut(before, with(40), NOW.plusSeconds(86_400));
            long many = putBack(after, with(40), NOW.plusSeconds(86_520), counting);

            assertThat(many).isEqualTo(one);
        }
        var jdbc = new JdbcTemplate(source);
        assertThat(jdbc.queryForObject("select count(*) from gauge where deadline is not null", Long.class))
                .isEqualTo(40);
        assertThat(DueRows.unwatched(jdbc)).isEmpty();
    }

    /** All points are read once, and the site is gone a minute later. */
    private static void takenOut(Journal journal, Setup there, Instant from) {
        List<Reading> readings = there.points().stream()
                .map(point -> new Reading("mesa-9", point.id(), 10, from))
                .toList();
        decide(journal, there, new Stimulus.Measured("mesa-9-box", readings), from);
        decide(journal, there, new Stimulus.SetupChanged(Setup.EMPTY, "owner"), from.plusSeconds(60));
    }

    /** How many statements it takes a writer that remembers nothing of it, since the other one wrote. */
    private static long putBack(Journal journal, Setup there, Instant at, CountingDataSource counting) {
        long before = counting.queries();
        decide(journal, Setup.EMPTY, new Stimulus.SetupChanged(there, "owner"), at);
        return counting.queries() - before;
    }

    private static void decide(Journal journal, Setup setup, Stimulus stimulus, Instant now) {
        try (Writing writing = journal.begin()) {
            var wants = new Wants(setup, now);
            wants.add(stimulus);
            Sheet sheet = writing.sheet(setup);
            sheet.prepare(wants);
            Decision decision = new Escalator(Links.NONE, sheet::nextCode).decide(sheet, stimulus, now);
            sheet.apply(decision.changes());
            if (stimulus instanceof Stimulus.SetupChanged changed) {
                sheet.setup(changed.setup());
            }
            writing.log(now, decision.entries());
            writing.commit(sheet, now);
        }
    }

    private static Point point(String id) {
        Point tank = Fixtures.measuredTank();
        return new Point(
                id,
                tank.site(),
                tank.name(),
                tank.unit(),
                tank.priority(),
                tank.timing(),
                tank.suppressedWhile(),
                true,
                tank.rules());
    }

    private static Setup with(int points) {
        Setup all = Fixtures.theSetup();
        return new Setup(
                List.copyOf(all.sites().values()),
                List.copyOf(all.boxes().values()),
                IntStream.range(0, points).mapToObj(i -> point("tank-" + i)).toList(),
                List.copyOf(all.contacts().values()),
                List.copyOf(all.rosters().values()),
                List.copyOf(all.ladders().values()));
    }
}
