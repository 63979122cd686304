package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.CountingDataSource;
import yardlight.db.TestDatabase;
import yardlight.db.due.DueKey;
import yardlight.escalation.Decision;
import yardlight.escalation.Entry;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** What the journal has to do on every database. */
abstract class JournalContract {

    private DataSource source;
    private JdbcTemplate jdbc;
    private Journal journal;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        source = database().newDataSource();
        jdbc = new JdbcTemplate(source);
        journal = new Journal(source);
    }

    @AfterEach
    void close() {
        journal.close();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void decides_from_what_is_stored_as_from_what_is_remembered(long seed) {
        compare(new TwinNight(List.of(journal), seed));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14})
    void decides_the_same_when_two_writers_take_turns(long seed) {
        try (var other = new Journal(source)) {
            compare(new TwinNight(List.of(journal, other), seed));
        }
    }

    private void compare(TwinNight night) {
        for (int i = 0; i < 120; i++) {
            TwinNight.Step step = night.step();

            assertThat(step.stored()).as("step %d: %s", i, step.stimuli()).isEqualTo(step.remembered());
            assertThat(DueRows.of(jdbc))
                    .as("due rows after step %d: %s", i, step.stimuli())
                    .isEqualTo(DueRows.expected(night));
            assertThat(outbox()).as("outbox after step %d", i).isEqualTo(expectedOutbox(night));
            assertThat(DueRows.unwatched(jdbc))
                    .as("boxes and points without a due row by their deadline after step %d", i)
                    .isEmpty();
        }
    }

    @Test
    void pushes_away_what_fired_and_is_due_as_before() {
        var night = new TwinNight(List.of(journal), 1);
        List<String> callouts = List.of();
        for (int i = 0; i < 120 && callouts.isEmpty(); i++) {
            night.step();
            callouts = jdbc.queryForList("select subject from due where kind = 'callout'", String.class);
        }
        String callout = callouts.get(0);
        Instant now = Instant.parse("2031-01-01T00:00:00Z");

        try (Writing writing = journal.begin()) {
            var wants = new Wants(night.setup(), now);
            wants.add(new Stimulus.CalloutDue(callout));
            Sheet sheet = writing.sheet(night.setup());
            sheet.prepare(wants);
            writing.fired(new DueKey(DueKey.Kind.CALLOUT, callout));
            writing.commit(sheet, now);
        }

        Instant due = jdbc.queryForObject(
                "select due_at from due where subject = ?",
                (rows, n) -> rows.getTimestamp(1).toInstant(),
                callout);
        assertThat(due).isEqualTo(now.plusSeconds(60));
    }

    @Test
    void numbers_the_lines_of_the_log_without_a_gap() {
        log("first", true);
        log("never written", false);
        log("second", true);

        assertThat(jdbc.queryForList("select line || ' ' || words from log_line order by line", String.class))
                .containsExactly("1 first", "2 second");
    }

    @Test
    void leaves_everything_as_it_was_without_a_commit() {
        var night = new TwinNight(List.of(journal), 1);
        night.step();
        Map<String, Object> before = jdbc.queryForMap("select * from lane");

        try (Writing writing = journal.begin()) {
            writing.sheet(night.setup()).nextCode();
        }

        assertThat(jdbc.queryForMap("select * from lane"))
                .usingRecursiveComparison()
                .isEqualTo(before);
    }

    @Test
    void keeps_from_when_boxes_are_heard_until_it_is_told_another_time() {
        Instant back = Fixtures.at("2026-11-25T01:00");
        assertThat(heardFrom(Optional.of(back))).isEmpty();
        assertThat(heardFrom(Optional.empty())).contains(back);
        assertThat(heardFrom(Optional.of(back.plusSeconds(9)))).contains(back);
        assertThat(heardFrom(Optional.empty())).contains(back.plusSeconds(9));
    }

    private Optional<Instant> heardFrom(Optional<Instant> then) {
        try (Writing writing = journal.begin()) {
            Optional<Instant> before = writing.heardFrom();
            then.ifPresent(writing::heardFrom);
            writing.commit(writing.sheet(Setup.EMPTY), Fixtures.at("2026-11-25T02:00"));
            return before;
        }
    }

    @Test
    void gives_out_codes_in_turn_and_leaves_out_those_that_live_callouts_have() {
        jdbc.update("update lane set last_code = 998");
        live(10);

        try (Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Setup.EMPTY);
            assertThat(List.of(sheet.nextCode(), sheet.nextCode(), sheet.nextCode()))
                    .containsExactly(999, 11, 12);
        }
    }

    @Test
    void gives_out_longer_codes_when_all_short_ones_are_taken() {
        for (int code = 10; code <= 999; code++) {
            live(code);
        }

        try (Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Setup.EMPTY);
            assertThat(List.of(sheet.nextCode(), sheet.nextCode())).containsExactly(1000, 1001);
        }
    }

    private void live(int code) {
        jdbc.update(
                "insert into callout (id, live_site, kind, code, site, ladder, priority, alarms, started_at,"
                        + " notices, announced, told, held, climb, rung, round) values (?, 'mesa-9', 'calling', ?,"
                        + " 'mesa-9', 'night', 'high', '', current_timestamp, 0, 1, '', '', 0, 0, 0)",
                "c-" + code,
                code);
    }

    @Test
    void hands_the_newest_setup_document_to_every_writer() {
        try (Writing writing = journal.begin();
                var other = new Journal(source)) {
            assertThat(writing.setupDocument()).isEmpty();
            int version = writing.setupDocument("sites: []", "owner", Fixtures.at("2026-11-25T01:00"));
            writing.commit(writing.sheet(Setup.EMPTY), Fixtures.at("2026-11-25T01:00"));

            try (Writing next = other.begin()) {
                assertThat(next.setupVersion()).isEqualTo(version).isEqualTo(1);
                assertThat(next.setupDocument()).contains("sites: []");
            }
        }
    }

    @Test
    void drops_the_calendars_of_who_is_no_contact_any_more() {
        for (String contact : List.of("ana", "ben")) {
            jdbc.update("insert into calendar_feed values (?, ?, 'owner', current_timestamp)", contact, contact);
        }

        try (Writing writing = journal.begin()) {
            writing.feedsOnlyOf(List.of("ana", "carl"));
            writing.commit(writing.sheet(Setup.EMPTY), Fixtures.at("2026-11-25T01:00"));
        }

        assertThat(jdbc.queryForList("select contact from calendar_feed", String.class))
                .containsExactly("ana");
    }

    @Test
    void needs_as_many_statements_for_a_large_batch_as_for_a_small_one() {
        statements(2, "warm");
        long small = statements(2, "small");
        long large = statements(9, "larger");
        long again = statements(400, "larger");

        assertThat(large).isEqualTo(small).isLessThan(40);
        assertThat(again).isLessThanOrEqualTo(large);
    }

    @Test
    void takes_a_silence_of_many_sites_apart_with_as_many_statements_as_one_of_few() {
        var sites = new SilentSites(source, 3);
        long few = sites.withoutTheFirst();
        assertThat(due()).containsExactly("box-1", "box-2");
        sites.putBack();
        assertThat(due()).containsExactly("box-0", "box-1", "box-2");

        long many = new SilentSites(database().newDataSource(), 40).withoutTheFirst();
        assertThat(many).isEqualTo(few);
    }

    private List<String> due() {
        return jdbc.queryForList("select box from box_watch where deadline is not null order by box", String.class);
    }

    /** How many statements it takes to store so many events of points whose names begin like this, at most nine of them. */
    private long statements(int events, String points) {
        Instant now = Fixtures.at("2026-11-25T01:00").plusSeconds(points.length() * 3600L + events);
        var counting = new CountingDataSource(source);
        try (var counted = new Journal(counting.proxy())) {
            long before;
            try (Writing writing = counted.begin()) {
                before = counting.queries() - 1;
                var posted = new ArrayList<Stimulus>();
                var wants = new Wants(Fixtures.theSetup(), now);
                var names = new ArrayList<String>();
                for (int i = 0; i < events; i++) {
                    var key = new AlarmKey("mesa-9", points + "-" + i % 9, "high");
                    posted.add(new Stimulus.Reported("mesa-9-box", List.of(Fixtures.active(key, now))));
                    names.add(PostedRecord.name("mesa-9-box", points + events + "-" + i));
                }
                posted.forEach(wants::add);
                Sheet sheet = writing.sheet(Fixtures.theSetup());
                sheet.prepare(wants);
                writing.known(names, now.minusSeconds(60));
                var escalator = new Escalator(Links.NONE, sheet::nextCode);
                for (Stimulus stimulus : posted) {
                    Decision decision = escalator.decide(sheet, stimulus, now);
                    sheet.apply(decision.changes());
                    writing.log(now, decision.entries());
                }
                writing.commit(sheet, now);
            }
            return counting.queries() - before;
        }
    }

    private void log(String words, boolean commit) {
        try (Writing writing = journal.begin()) {
            Instant now = Fixtures.at("2026-11-25T01:00");
            writing.log(now, List.of(new Entry(Entry.What.BOX, Map.of("site", "mesa-9"), words)));
            if (commit) {
                writing.commit(writing.sheet(Setup.EMPTY), now);
            }
        }
    }

    private TreeSet<String> outbox() {
        return new TreeSet<>(jdbc.queryForList("select notice || ' ' || channel from outbox", String.class));
    }

    private static TreeSet<String> expectedOutbox(TwinNight night) {
        return night.picture().notices().stream()
                .filter(notice -> notice.state() == NoticeState.QUEUED)
                .map(notice -> notice.id() + " "
                        + night.setup()
                                .contacts()
                                .get(notice.contact())
                                .lines()
                                .get(notice.line())
                                .channel())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
