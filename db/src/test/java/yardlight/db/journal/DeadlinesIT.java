package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.CountingDataSource;
import yardlight.db.TestDatabase;
import yardlight.db.columns.Column;
import yardlight.escalation.Decision;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/**
 * Heartbeats of most boxes leave the due row where it is, so that it fires for nothing again and again. What a silence is judged by, boxes of its site, link and feed among it, is read for those only that
 * are silent indeed.
 */
class DeadlinesIT {

    private static final int BOXES = 20;
    private static final Instant NOW = Fixtures.at("2026-11-25T01:00");

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void of_boxes_that_were_heard_since_ask_for_nothing_but_them_in_one_query(TestDatabase database) {
        DataSource source = watched(database, NOW.plusSeconds(30));

        Looked looked = looked(source, 8);

        assertThat(looked.boxes()).isEqualTo(ids(8));
        assertThat(looked.queries()).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void of_silent_ones_ask_for_their_neighbours_in_as_many_queries_for_many_as_for_one(TestDatabase database) {
        DataSource source = watched(database, NOW);

        Looked one = looked(source, 1);
        Looked many = looked(source, 8);

        assertThat(one.boxes()).isEqualTo(ids(BOXES));
        assertThat(many.boxes()).isEqualTo(ids(BOXES));
        assertThat(many.queries()).isEqualTo(one.queries()).isGreaterThan(1);
    }

    /** It was set up with half a minute of grace: the row would fire before the heartbeat after this one. */
    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void move_at_once_when_the_row_would_fire_before_the_next_heartbeat(TestDatabase database) {
        try (var heard = new Heard(database, Duration.ofMinutes(1), Duration.ofSeconds(30))) {
            heard.beat(NOW);
            heard.beat(NOW.plusSeconds(60));
            assertThat(heard.rows()).containsExactly(NOW.plusSeconds(150));
        }
    }

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void stay_where_they_are_under_a_box_that_posts_more_often(TestDatabase database) {
        try (var heard = new Heard(database, Duration.ofMinutes(1), Duration.ofSeconds(30))) {
            heard.beat(NOW);
            heard.beat(NOW.plusSeconds(10));
            heard.beat(NOW.plusSeconds(20));
            assertThat(heard.rows()).containsExactly(NOW.plusSeconds(90));

            heard.fire(NOW.plusSeconds(90));
            assertThat(heard.rows()).containsExactly(NOW.plusSeconds(110));
        }
    }

    /** It has a second of grace, and posts more often than it must: later than its grace, but long before its deadline. */
    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void stay_where_they_are_while_the_next_post_is_to_be_expected_before(TestDatabase database) {
        try (var heard = new Heard(database, Duration.ofMinutes(1), Duration.ofSeconds(1))) {
            heard.beat(NOW);
            heard.beat(NOW.plusSeconds(10));
            heard.beat(NOW.plusSeconds(20));
            assertThat(heard.rows()).containsExactly(NOW.plusSeconds(61));
        }
    }

    /** Whoever restored half a record. */
    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void are_written_anew_when_the_row_that_fired_is_gone(TestDatabase database) {
        try (var heard = new Heard(database, Duration.ofMinutes(1), Duration.ofSeconds(120))) {
            heard.beat(NOW);
            heard.beat(NOW.plusSeconds(60));
            heard.jdbc.update("delete from due");

            heard.fire(NOW.plusSeconds(180));
            assertThat(heard.rows()).containsExactly(NOW.plusSeconds(240));
        }
    }

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void are_written_anew_when_the_row_that_is_to_be_moved_is_gone(TestDatabase database) {
        try (var heard = new Heard(database, Duration.ofMinutes(1), Duration.ofSeconds(30))) {
            heard.beat(NOW);
            heard.jdbc.update("delete from due");

            heard.beat(NOW.plusSeconds(60));
            assertThat(heard.rows()).containsExactly(NOW.plusSeconds(150));
        }
    }

    /** One box and its due rows. */
    private static final class Heard implements AutoCloseable {

        private final JdbcTemplate jdbc;
        private final Journal journal;
        private final Setup setup;

        Heard(TestDatabase database, Duration every, Duration grace) {
            DataSource source = database.newDataSource();
            jdbc = new JdbcTemplate(source);
            journal = new Journal(source);
            var box = new Box("box-a", "mesa-9", Optional.empty(), Optional.empty(), true, Optional.of(every), grace);
            Setup whole = Fixtures.theSetup();
            setup = new Setup(
                    List.copyOf(whole.sites().values()), List.of(box), whole.points(), List.of(), List.of(), List.of());
        }

        void beat(Instant at) {
            take(new Stimulus.Beat("box-a", Heartbeat.BARE, Instant.EPOCH), at);
        }

        void fire(Instant at) {
            take(new Stimulus.BoxDue("box-a"), at);
        }

        private void take(Stimulus stimulus, Instant at) {
            try (Writing writing = journal.begin()) {
                var wants = new Wants(setup, at);
                wants.add(stimulus);
                Sheet sheet = writing.sheet(setup);
                sheet.prepare(wants);
                Decision decision = new Escalator(Links.NONE, sheet::nextCode).decide(sheet, stimulus, at);
                sheet.apply(decision.changes());
                TwinNight.fired(stimulus).ifPresent(writing::fired);
                writing.commit(sheet, at);
            }
        }

        List<Instant> rows() {
            return jdbc.query(
                    "select due_at from due where kind = 'box'",
                    (row, number) -> row.getTimestamp(1).toInstant());
        }

        @Override
        public void close() {
            journal.close();
        }
    }

    private record Looked(Set<String> boxes, long queries) {}

    /** What is read when the due rows of the first boxes fire, before anything is decided. */
    private static Looked looked(DataSource source, int due) {
        Setup setup = setup();
        var counting = new CountingDataSource(source);
        try (var journal = new Journal(counting.proxy());
                Writing writing = journal.begin()) {
            var wants = new Wants(setup, NOW);
            ids(due).forEach(id -> wants.add(new Stimulus.BoxDue(id)));
            Sheet sheet = writing.sheet(setup);
            long before = counting.queries();
            sheet.prepare(wants);
            return new Looked(new TreeSet<>(sheet.kept().boxes.keySet()), counting.queries() - before);
        }
    }

    private static Setup setup() {
        Setup setup = Fixtures.theSetup();
        for (String id : ids(BOXES)) {
            setup = setup.withBox(id, "mesa-9");
        }
        return setup;
    }

    private static DataSource watched(TestDatabase database, Instant deadline) {
        DataSource source = database.newDataSource();
        var jdbc = new JdbcTemplate(source);
        ids(BOXES)
                .forEach(id -> jdbc.update(
                        "insert into box_watch (box, heard_at, deadline, silent, feeds) values (?, ?, ?, false, '')",
                        id,
                        Column.stored(NOW.minus(Duration.ofMinutes(3))),
                        Column.stored(deadline)));
        return source;
    }

    private static Set<String> ids(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "box-" + (char) ('a' + i))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
