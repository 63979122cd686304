package yardlight.db.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Writing;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Setup;

/** What is read of the log, on every database. */
abstract class LogLinesContract {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    private LogLines log;
    private Journal journal;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        var source = database().newDataSource();
        journal = new Journal(source);
        log = new LogLines(new JdbcTemplate(source));
    }

    @Test
    void gives_lines_back_as_they_were_written_in_order() {
        write(NOW, Map.of("site", "mesa-9", "contact", "ana", "notice", "n-1"), "handed over; by mail");
        write(NOW.plusSeconds(1), Map.of("person", "owner"), "setup changed by owner");

        assertThat(lines(LogFilter.EVERYTHING))
                .containsExactly(
                        new LogLine(
                                1,
                                NOW,
                                "notice",
                                Map.of("site", "mesa-9", "contact", "ana", "notice", "n-1"),
                                "handed over; by mail"),
                        new LogLine(
                                2, NOW.plusSeconds(1), "notice", Map.of("person", "owner"), "setup changed by owner"));
    }

    @Test
    void gives_what_was_written_from_one_instant_on_and_before_another() {
        for (int i = 0; i < 4; i++) {
            write(NOW.plusSeconds(i), Map.of("site", "mesa-9"), "line " + i);
        }

        var filter = new LogFilter(
                Optional.of(NOW.plusSeconds(1)), Optional.of(NOW.plusSeconds(3)), Optional.empty(), Optional.empty());

        assertThat(lines(filter)).extracting(LogLine::words).containsExactly("line 1", "line 2");
    }

    @Test
    void gives_what_is_about_one_site_or_one_contact() {
        write(NOW, Map.of("site", "mesa-9", "contact", "ana"), "one");
        write(NOW, Map.of("site", "draw-2", "contact", "ana"), "two");
        write(NOW, Map.of("site", "mesa-9", "contact", "ben"), "three");

        assertThat(lines(about("mesa-9", null))).extracting(LogLine::words).containsExactly("one", "three");
        assertThat(lines(about(null, "ana"))).extracting(LogLine::words).containsExactly("one", "two");
        assertThat(lines(about("mesa-9", "ana"))).extracting(LogLine::words).containsExactly("one");
    }

    @Test
    void gives_a_long_log_whole() {
        var entries = new ArrayList<Entry>();
        for (int i = 0; i < 2_500; i++) {
            entries.add(new Entry(Entry.What.EVENT, Map.of(), "line " + i));
        }
        write(NOW, entries);

        assertThat(lines(LogFilter.EVERYTHING))
                .hasSize(2_500)
                .last()
                .extracting(LogLine::line)
                .isEqualTo(2_500L);
    }

    private static LogFilter about(String site, String contact) {
        return new LogFilter(
                Optional.empty(), Optional.empty(), Optional.ofNullable(site), Optional.ofNullable(contact));
    }

    private List<LogLine> lines(LogFilter filter) {
        var lines = new ArrayList<LogLine>();
        log.each(filter, lines::add);
        return lines;
    }

    private void write(Instant now, Map<String, String> about, String words) {
        write(now, List.of(new Entry(Entry.What.NOTICE, about, words)));
    }

    private void write(Instant now, List<Entry> entries) {
        try (Writing writing = journal.begin()) {
            writing.log(now, entries);
            writing.commit(writing.sheet(Setup.EMPTY), now);
        }
    }
}
