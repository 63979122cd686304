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
import yardlight.db.columns.Column;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Writing;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Setup;

/** What is read of the log, on every database. */
abstract class LogLinesContract {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    private LogLines log;
    private Journal journal;
    private JdbcTemplate jdbc;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        var source = database().newDataSource();
        journal = new Journal(source);
        jdbc = new JdbcTemplate(source);
        log = new LogLines(jdbc);
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

    @Test
    void turns_pages_from_the_newest_line_back() {
        for (int i = 1; i <= 5; i++) {
            write(NOW, Map.of("site", "mesa-9"), "line " + i);
        }
        write(NOW.plusSeconds(1), Map.of("site", "draw-2"), "line 6");

        LogPage first = log.newest(Optional.empty(), about("mesa-9", null), 2);
        LogPage second = log.newest(first.next(), about("mesa-9", null), 2);
        LogPage third = log.newest(second.next(), about("mesa-9", null), 2);

        assertThat(first.lines()).extracting(LogLine::line).containsExactly(5L, 4L);
        assertThat(second.lines()).extracting(LogLine::line).containsExactly(3L, 2L);
        assertThat(third.lines()).extracting(LogLine::line).containsExactly(1L);
        assertThat(third.next()).isEmpty();
        assertThat(log.newest(Optional.empty(), LogFilter.EVERYTHING, 1).lines())
                .extracting(LogLine::line)
                .containsExactly(6L);
    }

    @Test
    void looks_for_one_kind_only_so_far_back_at_once_and_says_how_far() {
        write(NOW, List.of(new Entry(Entry.What.SETUP, Map.of(), "setup changed by owner")));
        many(LogLines.STRETCH + 10);
        var setup = new LogFilter(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("setup"));

        LogPage near = log.newest(Optional.empty(), setup, 50);
        LogPage far = log.newest(near.next(), setup, 50);

        assertThat(near.lines()).isEmpty();
        assertThat(near.searchedTo()).isPresent();
        assertThat(far.lines()).extracting(LogLine::words).containsExactly("setup changed by owner");
        assertThat(far.next()).isEmpty();
        assertThat(far.searchedTo()).isEmpty();
    }

    /** A log of so many more lines, each a millisecond after the one before, of twenty sites. */
    private void many(long lines) {
        jdbc.update(
                "insert into log_line (line, logged_at, what, site, about, words) select 1 + n, "
                        + "cast(? as timestamp(6) with time zone) + n * interval '0.001' second, 'event', "
                        + "'site-' || mod(n, 20), '', 'words' from "
                        + database().numbers(lines),
                Column.stored(NOW));
    }

    @Test
    void reads_a_page_without_reading_what_is_not_on_it() {
        many(LogLines.STRETCH);
        jdbc.execute("analyze");

        for (LogFilter filter : List.of(
                LogFilter.EVERYTHING,
                about("site-3", null),
                new LogFilter(
                        Optional.empty(),
                        Optional.of(NOW.plusSeconds(100)),
                        Optional.of("site-3"),
                        Optional.empty()))) {
            long began = System.nanoTime();
            LogPage page = log.newest(Optional.of(LogLines.STRETCH / 2), filter, 50);
            long took = (System.nanoTime() - began) / 1_000_000;

            assertThat(page.lines()).hasSize(50);
            assertThat(took).as("ms for " + filter).isLessThan(100);
        }
    }

    @Test
    void tells_the_story_of_one_alarm_and_its_callout_in_order() {
        String alarm = "mesa-9.water-tank.high-high.1";
        Map<String, String> about = Map.of("site", "mesa-9", "alarm", alarm);
        write(
                NOW,
                List.of(new Entry(
                        Entry.What.EVENT,
                        Map.of("site", "mesa-9", "alarm", "mesa-9.water-tank.high-high.0"),
                        "water-tank/high-high active 18.4 ft (limit 18.0): delayed")));
        write(
                NOW.plusSeconds(1),
                List.of(
                        new Entry(Entry.What.ALARM, about, "began"),
                        new Entry(Entry.What.EVENT, about, "water-tank/high-high active: repeated")));
        write(
                NOW.plusSeconds(2),
                List.of(new Entry(
                        Entry.What.CALLOUT,
                        Map.of("site", "mesa-9", "callout", "c-1", "alarm", "other.alarm.x.1"),
                        "calls")));
        write(
                NOW.plusSeconds(3),
                List.of(new Entry(
                        Entry.What.ALARM, Map.of("site", "mesa-9", "alarm", alarm + "1"), "of another occurrence")));
        write(NOW.plusSeconds(9), List.of(new Entry(Entry.What.ALARM, about, "too late")));

        var span = new AlarmSpan(
                "mesa-9", alarm, "water-tank/high-high", Optional.of("c-1"), NOW, Optional.of(NOW.plusSeconds(9)));

        assertThat(log.about(span, 100))
                .extracting(LogLine::words)
                .containsExactly("water-tank/high-high active 18.4 ft (limit 18.0): delayed", "began", "calls");
        assertThat(log.about(span, 1)).extracting(LogLine::words).containsExactly("calls");
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
