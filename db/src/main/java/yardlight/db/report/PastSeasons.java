package yardlight.db.report;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.LogColumns;
import yardlight.db.columns.Row;
import yardlight.db.columns.RowByRow;
import yardlight.db.columns.Table;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.rehearsal.Past;
import yardlight.escalation.rehearsal.PastDeed;
import yardlight.escalation.rehearsal.PastText;

/** Reads what is remembered of a time, so that it can be played again: three queries, however many nights it has. */
@Repository
public class PastSeasons {

    /** An alarm has some five lines in its life, and calls some five people; one that chatters has more. */
    private static final int LINES_OF_AN_ALARM = 20;

    private static final String OF_SITES = " and site = any(?)";

    private static final String LINES = "select logged_at, what, about, words from log_line"
            + " where logged_at >= ? and logged_at < ? and what in ('alarm', 'answer')";

    private static final String TEXTS =
            "select n.id as id, n.contact as contact, n.channel as channel, n.queued_at as queued_at,"
                    + " n.held_until as held_until, c.site as site from notice n"
                    + " join notice_callout nc on nc.notice = n.id join callout c on c.id = nc.callout"
                    + " where n.queued_at >= ? and n.queued_at < ? and n.handed_over_at is not null"
                    + " and coalesce(n.purpose, 'call') = 'call' and c.started_at >= ? and c.started_at < ?";

    private static final String PRIORITIES =
            "select t.id, t.priority from " + Table.WANTED + " join alarm t on t.id = wanted.one";

    private final JdbcTemplate jdbc;

    PastSeasons(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * What began from {@code from}, inclusive, to {@code to}, exclusive, and what came of it within a day after that.
     *
     * @param sites empty for all of them
     * @param most so many alarms
     * @return empty when there are more, or far more lines or texts about them than that
     */
    public Optional<Past> between(Optional<Set<String>> sites, Instant from, Instant to, int most) {
        int lines = most * LINES_OF_AN_ALARM;
        Optional<List<PastDeed>> deeds = deeds(sites, from, to, lines).filter(all -> began(all, to) <= most);
        if (deeds.isEmpty()) {
            return Optional.empty();
        }
        return texts(sites, from, to, lines)
                .map(texts -> new Past(from, to, deeds.get(), texts, priorities(deeds.get())));
    }

    private static long began(List<PastDeed> deeds, Instant to) {
        return deeds.stream()
                .filter(deed -> deed.what() == PastDeed.What.BEGAN && deed.at().isBefore(to))
                .count();
    }

    /** Empty when it would be cut short: lines that tell of no deed count as well, because they are read as well. */
    private Optional<List<PastDeed>> deeds(Optional<Set<String>> sites, Instant from, Instant to, int lines) {
        var values = new ArrayList<Object>(List.of(Column.stored(from), Column.stored(to.plus(Past.AFTER))));
        var deeds = new ArrayList<PastDeed>();
        var read = new AtomicInteger();
        RowByRow.each(
                jdbc,
                LINES + of(sites, OF_SITES, values) + " order by logged_at, line" + first(lines),
                rows -> {
                    var row = new Row(rows);
                    read.incrementAndGet();
                    deeds.addAll(PastDeed.read(
                            row.time("logged_at"),
                            row.text("what"),
                            LogColumns.about(row.text("about")),
                            row.text("words")));
                },
                values.toArray());
        return Optional.<List<PastDeed>>of(deeds).filter(all -> read.get() < lines);
    }

    private static String first(int lines) {
        return " fetch first " + lines + " rows only";
    }

    private static String of(Optional<Set<String>> sites, String condition, List<Object> values) {
        sites.ifPresent(some -> values.add(some.toArray(String[]::new)));
        return sites.map(some -> condition).orElse("");
    }

    /** A bundle has a row for each callout, and is one text. Empty when it would be cut short. */
    private Optional<List<PastText>> texts(Optional<Set<String>> sites, Instant from, Instant to, int lines) {
        var values = new ArrayList<Object>(List.of(
                Column.stored(from), Column.stored(to.plus(Past.AFTER)), Column.stored(from), Column.stored(to)));
        var texts = new LinkedHashMap<String, PastText>();
        var read = new AtomicInteger();
        RowByRow.each(
                jdbc,
                TEXTS + of(sites, " and c.site = any(?)", values) + " order by n.queued_at, n.id" + first(lines),
                rows -> {
                    read.incrementAndGet();
                    take(new Row(rows), texts);
                },
                values.toArray());
        return Optional.of(List.copyOf(texts.values())).filter(all -> read.get() < lines);
    }

    private static void take(Row row, Map<String, PastText> texts) throws SQLException {
        var about = new LinkedHashSet<>(Set.of(row.text("site")));
        String id = row.text("id");
        Optional.ofNullable(texts.get(id)).ifPresent(text -> about.addAll(text.sites()));
        texts.put(
                id,
                PastText.of(
                        Notice.written(row.time("queued_at"), row.maybeTime("held_until")),
                        row.text("contact"),
                        row.maybe("channel").orElse(""),
                        about));
    }

    private Map<String, Priority> priorities(List<PastDeed> deeds) {
        String[] alarms = deeds.stream().map(PastDeed::alarm).distinct().toArray(String[]::new);
        var priorities = new HashMap<String, Priority>();
        RowByRow.each(
                jdbc,
                PRIORITIES,
                rows -> priorities.put(
                        rows.getString("id"),
                        Priority.of(rows.getString("priority")).orElseThrow()),
                (Object) alarms);
        return priorities;
    }
}
