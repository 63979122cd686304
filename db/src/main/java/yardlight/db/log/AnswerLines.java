package yardlight.db.log;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.LogColumns;
import yardlight.db.columns.Row;
import yardlight.db.columns.RowByRow;

/**
 * Reads the lines that prove who was told of an alarm and who answered: one query, however many alarms. An index leads to
 * the lines of the site and of the time in which somebody could still say something to the occurrence.
 */
@Repository
public class AnswerLines {

    /** An occurrence that nobody answered ends with the next one; a day after its return nobody says anything to it. */
    private static final String TO_ALARMS = """
            select a.id as id, l.line as line, l.logged_at as logged_at, l.what as what, l.about as about, l.words as words
            from alarm a join log_line l on l.site = a.site
            where a.id = any(?) and l.logged_at >= a.received_at
              and l.logged_at <= coalesce(a.acknowledged_at,
                  case when a.current_key is not null then ? else a.returned_at + interval '1' day end,
                  a.received_at + interval '1' day)
              and l.what in ('answer', 'callout') and l.about like 'alarm ' || a.id || ';%'
            order by l.line""";

    private static final String OF_PEOPLE = "select line, about from log_line"
            + " where contact = any(?) and logged_at >= ? and logged_at <= ? and what in ('notice', 'attempt')"
            + " order by line";

    private record OfAlarm(String id, LogLine line) {}

    private final JdbcTemplate jdbc;

    public AnswerLines(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * What people said to these occurrences, and the steps of their callouts, by the alarm's id and in order: up to the
     * newest acknowledgement.
     *
     * @param now up to when is looked for those that nobody has acknowledged
     */
    public Map<String, List<LogLine>> toAlarms(Collection<String> alarms, Instant now) {
        if (alarms.isEmpty()) {
            return Map.of();
        }
        return jdbc
                .query(
                        TO_ALARMS,
                        (rows, n) -> new OfAlarm(rows.getString("id"), line(rows)),
                        alarms.toArray(String[]::new),
                        Column.stored(now))
                .stream()
                .collect(Collectors.groupingBy(OfAlarm::id, Collectors.mapping(OfAlarm::line, Collectors.toList())));
    }

    /**
     * The lines that tell what became of these notices, by the notice and in order. However much else people were told
     * meanwhile is read past and not held.
     *
     * @param notices ids
     * @param contacts to whom they went
     * @param from included
     * @param to included
     */
    public Map<String, List<Long>> ofNotices(
            Set<String> notices, Collection<String> contacts, Instant from, Instant to) {
        if (notices.isEmpty() || contacts.isEmpty()) {
            return Map.of();
        }
        var lines = new HashMap<String, List<Long>>();
        RowByRow.each(
                jdbc,
                OF_PEOPLE,
                rows -> {
                    var row = new Row(rows);
                    String notice = LogColumns.about(row.text("about")).get("notice");
                    if (notice != null && notices.contains(notice)) {
                        lines.computeIfAbsent(notice, any -> new ArrayList<>()).add(row.big("line"));
                    }
                },
                contacts.toArray(String[]::new),
                Column.stored(from),
                Column.stored(to));
        return lines;
    }

    private static LogLine line(ResultSet rows) throws SQLException {
        var row = new Row(rows);
        return new LogLine(
                row.big("line"),
                row.time("logged_at"),
                row.text("what"),
                LogColumns.about(row.text("about")),
                row.text("words"));
    }
}
