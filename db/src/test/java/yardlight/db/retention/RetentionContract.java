package yardlight.db.retention;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.PostedRecord;
import yardlight.db.journal.Sheet;
import yardlight.db.journal.Writing;
import yardlight.escalation.Decision;
import yardlight.escalation.Entry;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.wording.Links;

/** What is let go and what stays, on every database. */
abstract class RetentionContract {

    private static final Instant THEN = Fixtures.at("2026-11-25T12:00");
    private static final Instant AFTER_THE_RECORD =
            THEN.plus(Ages.USUAL.record()).plus(Duration.ofDays(1));

    private DataSource source;
    private JdbcTemplate jdbc;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        source = database().newDataSource();
        jdbc = new JdbcTemplate(source);
    }

    @Test
    void lets_events_go_after_90_days_and_nothing_else() {
        anOccurrence(THEN);

        new Retention(jdbc).sweep(Ages.USUAL, THEN.plus(Duration.ofDays(90)));
        assertThat(count("event")).isEqualTo(1);

        new Retention(jdbc).sweep(Ages.USUAL, THEN.plus(Duration.ofDays(90)).plusMillis(1));
        assertThat(count("event")).isZero();
        assertThat(count("alarm")).isEqualTo(1);
        assertThat(count("log_line")).isPositive();
    }

    @Test
    void keeps_the_newest_occurrence_with_its_callout_and_notices_however_old() {
        anOccurrence(THEN);

        new Retention(jdbc).sweep(Ages.USUAL, AFTER_THE_RECORD);

        assertThat(count("alarm")).isEqualTo(1);
        assertThat(count("callout")).isEqualTo(1);
        assertThat(count("notice")).isEqualTo(2);
    }

    @Test
    void lets_lines_of_the_log_go_by_256_and_keeps_the_hash_of_each_such_range() {
        lines(300, THEN);
        lines(600, THEN.plus(Duration.ofDays(2)));

        Map<String, Integer> swept = new Retention(jdbc).sweep(Ages.USUAL, AFTER_THE_RECORD);

        assertThat(swept).containsEntry("log_line", 256);
        assertThat(jdbc.queryForObject("select min(line) from log_line", Long.class))
                .isEqualTo(257);
        assertThat(count("log_tile")).isEqualTo(3);

        new Retention(jdbc).sweep(Ages.USUAL, AFTER_THE_RECORD.plus(Duration.ofDays(2)));
        assertThat(jdbc.queryForObject("select min(line) from log_line", Long.class))
                .isEqualTo(769);
        assertThat(count("log_line")).isEqualTo(900 - 768);
    }

    @Test
    void lets_older_occurrences_go_with_all_that_was_done_about_them() {
        anOccurrence(THEN);
        anOccurrence(THEN.plus(Duration.ofDays(2)));
        assertThat(List.of(count("alarm"), count("callout"), count("notice"), count("notice_callout")))
                .containsExactly(2L, 2L, 4L, 4L);

        Map<String, Integer> swept = new Retention(jdbc).sweep(Ages.USUAL, AFTER_THE_RECORD);

        assertThat(swept).containsEntry("alarm", 1).containsEntry("callout", 1).containsEntry("notice", 2);
        assertThat(List.of(count("alarm"), count("callout"), count("notice"), count("notice_callout")))
                .containsExactly(1L, 1L, 2L, 2L);
    }

    /** It says so of itself while its clock is years behind. */
    @Test
    void keeps_what_came_in_lately_however_long_ago_its_box_says_that_it_was() {
        anOccurrence(THEN.plus(Duration.ofDays(1_000)));
        anOccurrence(THEN.plus(Duration.ofDays(1_001)));
        jdbc.update("update alarm set occurred_at = ?, returned_at = ?", time(), time());

        new Retention(jdbc).sweep(Ages.USUAL, AFTER_THE_RECORD);

        assertThat(count("alarm")).isEqualTo(2);
    }

    @Test
    void lets_old_invitations_go_with_the_events_and_old_devices_with_the_record() {
        jdbc.update(
                "insert into person (login, password_hash, role, created_at) values ('ana', 'x', 'hand', ?)", time());
        jdbc.update(
                "insert into device (id, login, way, address, agent, first_at, last_at) values ('d', 'ana', 'browser', '', '', ?, ?)",
                time(),
                time());
        jdbc.update(
                "insert into invitation (id, token_hash, role, invited_by, invited_at, expires_at) values ('i', 'h', 'hand', 'ana', ?, ?)",
                time(),
                time());

        new Retention(jdbc).sweep(Ages.USUAL, THEN.plus(Duration.ofDays(90)).plusMillis(1));
        assertThat(List.of(count("invitation"), count("device"))).containsExactly(0L, 1L);

        new Retention(jdbc).sweep(Ages.USUAL, AFTER_THE_RECORD);
        assertThat(List.of(count("person"), count("device"))).containsExactly(1L, 0L);
    }

    @Test
    void is_never_so_short_that_a_repeated_id_would_be_taken_for_new() {
        assertThatThrownBy(() -> new Ages(Duration.ofDays(29), Duration.ofDays(1000)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Ages(Duration.ofDays(90), Duration.ofDays(89)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** The tank alarms, somebody is told, answers, it is over, and they are told that too. */
    private void anOccurrence(Instant at) {
        Report report = new Report(
                Fixtures.TANK,
                Optional.of("mesa-9-box"),
                true,
                Optional.of(Priority.CRITICAL),
                Measured.NOTHING,
                at,
                false);
        decide(at, new Stimulus.Reported("mesa-9-box", List.of(report)), Optional.of(report));
        String notice = jdbc.queryForObject("select notice from outbox", String.class);
        decide(at, new Stimulus.NoticeFate(notice, 0, Stimulus.Fate.HANDED_OVER, "250 taken"), Optional.empty());
        decide(at.plusSeconds(60), new Stimulus.AnswerNotice(notice, "link"), Optional.empty());
        decide(
                at.plusSeconds(90),
                new Stimulus.Reported("mesa-9-box", List.of(Fixtures.normal(Fixtures.TANK, at.plusSeconds(90)))),
                Optional.empty());
        decide(at.plusSeconds(600), new Stimulus.DeskDue("ana"), Optional.empty());
        String news = jdbc.queryForObject("select notice from outbox", String.class);
        decide(
                at.plusSeconds(601),
                new Stimulus.NoticeFate(news, 0, Stimulus.Fate.HANDED_OVER, "250 taken"),
                Optional.empty());
    }

    private void decide(Instant now, Stimulus stimulus, Optional<Report> posted) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            Decision decision = new Escalator(Links.NONE, sheet::nextCode).decide(sheet, stimulus, now);
            sheet.apply(decision.changes());
            writing.log(now, decision.entries());
            posted.ifPresent(report -> writing.event(
                    new PostedRecord("mesa-9-box", Optional.empty(), report, now, Outcome.OCCURRED, Optional.empty())));
            writing.commit(sheet, now);
        }
    }

    private static Object time() {
        return THEN.atOffset(ZoneOffset.UTC);
    }

    private void lines(int count, Instant at) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            var entry = new Entry(Entry.What.CLOCK, Map.of(), "a line");
            writing.log(at, java.util.Collections.nCopies(count, entry));
            writing.commit(sheet, at);
        }
    }

    private long count(String table) {
        return jdbc.queryForObject("select count(*) from " + table, Long.class);
    }
}
