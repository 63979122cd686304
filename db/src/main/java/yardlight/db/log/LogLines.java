package yardlight.db.log;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.LogColumns;
import yardlight.db.columns.Row;

/** Reads the log. */
@Repository
public class LogLines {

    /** How far back one page looks for lines of which few may fit: that takes a moment, however long the log is. */
    static final long STRETCH = 200_000;

    private static final int PAGE = 1000;
    private static final String SELECT = "select line, logged_at, what, about, words from log_line where ";
    private static final String LAST =
            "select line, logged_at, what, about, words from log_line order by line desc fetch first 1 rows only";

    private final JdbcTemplate jdbc;

    LogLines(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Up to so many lines that fit, in order, beginning after the line with this number; 0 for the beginning. */
    public List<LogLine> after(long line, LogFilter filter, int limit) {
        var where = new StringBuilder(SELECT).append("line > ?");
        var values = new ArrayList<Object>(List.of(line));
        and(where, values, filter);
        where.append(" order by line fetch first ").append(limit).append(" rows only");
        return jdbc.query(where.toString(), LogLines::read, values.toArray());
    }

    /** Hands over every line that fits, in order; a page at a time, so that a long log needs little memory. */
    public void each(LogFilter filter, Consumer<LogLine> reader) {
        long last = 0;
        List<LogLine> page;
        do {
            page = after(last, filter, PAGE);
            page.forEach(reader);
            last = page.isEmpty() ? last : page.get(page.size() - 1).line();
        } while (page.size() == PAGE);
    }

    /**
     * Up to so many lines that fit, newest first. What it costs does not grow with the log: an index leads to the lines in
     * this order, and where few of them may fit only a stretch of the log is looked through.
     *
     * @param before only what was written before the line with this number; empty for the newest
     */
    public LogPage newest(Optional<Long> before, LogFilter filter, int limit) {
        Optional<LogLine> start = before.flatMap(this::one);
        Optional<LogLine> end = filter.sparse()
                ? end(start)
                        .filter(line ->
                                filter.from().filter(line.at()::isBefore).isEmpty())
                : Optional.empty();
        var where = new StringBuilder(SELECT).append("1 = 1");
        var values = new ArrayList<Object>();
        and(where, values, filter);
        start.ifPresent(line -> {
            and(where, values, "logged_at <= ?", Column.stored(line.at()));
            and(where, values, "(logged_at < ? or line < ?)", Column.stored(line.at()));
            values.add(line.line());
        });
        end.ifPresent(line -> and(where, values, "logged_at >= ?", Column.stored(line.at())));
        // The index is found by its first column as well.
        String first = filter.site()
                .map(site -> "site desc, ")
                .orElse(filter.contact().map(contact -> "contact desc, ").orElse(""));
        where.append(" order by ").append(first).append("logged_at desc, line desc fetch first ");
        where.append(limit + 1).append(" rows only");
        List<LogLine> found = jdbc.query(where.toString(), LogLines::read, values.toArray());
        return page(found, end, limit);
    }

    private static LogPage page(List<LogLine> found, Optional<LogLine> end, int limit) {
        if (found.size() > limit) {
            List<LogLine> lines = found.subList(0, limit);
            return new LogPage(lines, Optional.of(lines.get(limit - 1).line()), Optional.empty());
        }
        return new LogPage(found, end.map(LogLine::line), end.map(LogLine::at));
    }

    /** The line at which a stretch that begins here ends; empty when the log does. */
    private Optional<LogLine> end(Optional<LogLine> start) {
        return start.or(this::last)
                .map(line -> line.line() - STRETCH)
                .filter(line -> line > 0)
                .flatMap(this::one);
    }

    /**
     * What was written about one occurrence of an alarm and its callout, and the reports with which it began, in order.
     *
     * @param most so many lines, the newest ones
     */
    public List<LogLine> about(AlarmSpan span, int most) {
        var where = new StringBuilder(SELECT);
        where.append("site = ? and logged_at >= ? and (");
        where.append("what in ('alarm', 'answer', 'callout', 'box') and (about like ? or about like ?)");
        where.append(" or what = 'event' and (words like ? or words like ?))");
        var values = new ArrayList<Object>(List.of(
                span.site(),
                Column.stored(span.from()),
                "alarm " + span.alarm() + ";%",
                "%callout " + span.callout().orElse("none") + ";%",
                span.local() + " active%: delayed",
                span.local() + " active%: occurred"));
        span.to().ifPresent(to -> and(where, values, "logged_at < ?", Column.stored(to)));
        where.append(" order by site desc, logged_at desc, line desc fetch first ")
                .append(most);
        List<LogLine> newest = jdbc.query(where.append(" rows only").toString(), LogLines::read, values.toArray());
        var lines = new ArrayList<LogLine>(newest);
        Collections.reverse(lines);
        return List.copyOf(lines);
    }

    /** The line with this number. */
    public Optional<LogLine> one(long line) {
        return jdbc.query(SELECT + "line = ?", LogLines::read, line).stream().findFirst();
    }

    /** The line that was written last. */
    public Optional<LogLine> last() {
        return jdbc.query(LAST, LogLines::read).stream().findFirst();
    }

    private static LogLine read(ResultSet rows, int number) throws SQLException {
        var row = new Row(rows);
        return new LogLine(
                row.big("line"),
                row.time("logged_at"),
                row.text("what"),
                LogColumns.about(row.text("about")),
                row.text("words"));
    }

    private static void and(StringBuilder where, List<Object> values, LogFilter filter) {
        filter.site().ifPresent(site -> and(where, values, "site = ?", site));
        filter.contact().ifPresent(contact -> and(where, values, "contact = ?", contact));
        filter.what().ifPresent(what -> and(where, values, "what = ?", what));
        filter.from().ifPresent(from -> and(where, values, "logged_at >= ?", Column.stored(from)));
        filter.to().ifPresent(to -> and(where, values, "logged_at < ?", Column.stored(to)));
    }

    private static void and(StringBuilder where, List<Object> values, String condition, Object value) {
        where.append(" and ").append(condition);
        values.add(value);
    }
}
