package yardlight.db.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.CountingDataSource;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Sheet;
import yardlight.db.journal.Writing;
import yardlight.escalation.Decision;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.wording.Links;

/** The lines that prove who answered, on every database. */
abstract class AnswerLinesContract {

    private static final Instant NOW = Fixtures.at("2026-11-25T12:00");
    private static final AlarmKey SEPARATOR = new AlarmKey("mesa-9", "separator", "low");
    private static final String TANK = "mesa-9.water-tank.high-high.1";

    private DataSource source;
    private AnswerLines lines;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        source = database().newDataSource();
        lines = new AnswerLines(new JdbcTemplate(source));
    }

    /** Of the first answer the alarm itself knows nothing any more once it has become more urgent. */
    @Test
    void the_first_answer_is_found_after_an_alarm_was_raised_and_answered_anew() {
        decide(NOW, active(Fixtures.TANK, Priority.MEDIUM, NOW));
        decide(NOW.plusSeconds(60), acknowledged(Fixtures.TANK, "ben"));
        decide(NOW.plusSeconds(120), active(Fixtures.TANK, Priority.CRITICAL, NOW.plusSeconds(120)));
        decide(NOW.plusSeconds(180), acknowledged(Fixtures.TANK, "ana"));

        List<LogLine> found =
                lines.toAlarms(List.of(TANK), NOW.plusSeconds(200)).get(TANK);

        assertThat(found)
                .filteredOn(line -> line.what().equals("answer"))
                .extracting(LogLine::words)
                .satisfiesExactly(
                        words -> assertThat(words).contains("acknowledged by ben"),
                        words -> assertThat(words).contains("acknowledged by ana"));
        assertThat(found).filteredOn(line -> line.what().equals("callout")).isNotEmpty();
    }

    @Test
    void each_occurrence_has_its_own_and_one_that_nobody_answered_has_none() {
        decide(NOW, active(Fixtures.TANK, Priority.HIGH, NOW));
        decide(NOW.plusSeconds(5), active(SEPARATOR, Priority.HIGH, NOW.plusSeconds(5)));
        decide(NOW.plusSeconds(60), acknowledged(Fixtures.TANK, "ben"));

        Map<String, List<LogLine>> found = lines.toAlarms(List.of(TANK, "mesa-9.separator.low.1"), NOW.plusSeconds(90));

        assertThat(answers(found, TANK)).hasSize(1);
        assertThat(answers(found, "mesa-9.separator.low.1")).isEmpty();
    }

    @Test
    void what_became_of_notices_is_found_and_of_no_others() {
        decide(NOW, active(Fixtures.TANK, Priority.HIGH, NOW));

        decide(NOW, active(SEPARATOR, Priority.HIGH, NOW));
        List<String> all = new JdbcTemplate(source).queryForList("select id from notice order by id", String.class);
        String wanted = all.get(0);

        Map<String, List<Long>> found = lines.ofNotices(Set.of(wanted), List.of("ana"), NOW, NOW.plusSeconds(1));

        assertThat(all).hasSizeGreaterThan(1);
        assertThat(found).containsOnlyKeys(wanted);
        assertThat(found.get(wanted)).isNotEmpty();
        assertThat(lines.ofNotices(Set.copyOf(all), List.of("ana"), NOW, NOW.plusSeconds(1)))
                .containsOnlyKeys(all);
        assertThat(lines.ofNotices(Set.of(wanted), List.of("ben"), NOW, NOW.plusSeconds(1)))
                .isEmpty();
        assertThat(lines.ofNotices(Set.of(wanted), List.of("ana"), NOW.plusSeconds(1), NOW.plusSeconds(2)))
                .isEmpty();
    }

    @Test
    void one_query_is_enough_for_any_number_of_alarms() {
        decide(NOW, active(Fixtures.TANK, Priority.HIGH, NOW));
        decide(NOW, active(SEPARATOR, Priority.HIGH, NOW));
        var counting = new CountingDataSource(source);

        new AnswerLines(new JdbcTemplate(counting.proxy())).toAlarms(List.of(TANK, "mesa-9.separator.low.1"), NOW);

        assertThat(counting.queries()).isEqualTo(1);
    }

    private static List<LogLine> answers(Map<String, List<LogLine>> found, String alarm) {
        return found.getOrDefault(alarm, List.of()).stream()
                .filter(line -> line.what().equals("answer"))
                .toList();
    }

    private void decide(Instant now, Stimulus stimulus) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            Decision decision = new Escalator(Links.NONE, sheet::nextCode).decide(sheet, stimulus, now);
            sheet.apply(decision.changes());
            writing.log(now, decision.entries());
            writing.commit(sheet, now);
        }
    }

    private static Stimulus acknowledged(AlarmKey key, String by) {
        return new Stimulus.Acknowledge(key, by, "page", Optional.empty());
    }

    private static Stimulus active(AlarmKey key, Priority priority, Instant at) {
        return new Stimulus.Reported(
                "mesa-9-box",
                List.of(new Report(
                        key, Optional.of("mesa-9-box"), true, Optional.of(priority), Measured.NOTHING, at, false)));
    }
}
