package yardlight.db.log;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
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

    private static final int PAGE = 1000;
    private static final String SELECT = "select line, logged_at, what, about, words from log_line where line > ?";

    private static final String LAST =
            "select line, logged_at, what, about, words from log_line order by line desc fetch first 1 rows only";

    private final JdbcTemplate jdbc;

    LogLines(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Up to so many lines that fit, in order, beginning after the line with this number; 0 for the beginning. */
    public List<LogLine> after(long line, LogFilter filter, int limit) {
        var where = new StringBuilder(SELECT);
        var values = new ArrayList<Object>(List.of(line));
        filter.site().ifPresent(site -> and(where, values, "site = ?", site));
        filter.contact().ifPresent(contact -> and(where, values, "contact = ?", contact));
        filter.from().ifPresent(from -> and(where, values, "logged_at >= ?", Column.stored(from)));
        filter.to().ifPresent(to -> and(where, values, "logged_at < ?", Column.stored(to)));
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

    private static void and(StringBuilder where, List<Object> values, String condition, Object value) {
        where.append(" and ").append(condition);
        values.add(value);
    }
}
