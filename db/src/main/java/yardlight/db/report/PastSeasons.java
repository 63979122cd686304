package yardlight.db.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    /** An alarm has some five lines in its life; one that chatters has more. */
    private static final int LINES_OF_AN_ALARM = 20;

    private static final String OF_SITES = " and site = any(?)";

    private static final String LINES = "select logged_at, what, about, words from log_line"
            + " where logged_at >= ? and logged_at < ? and what in ('alarm', 'answer')";

    private static final String TEXTS =
            "select n.id as id, n.contact as contact, n.channel as channel, n.queued_at as queued_at,"
                    + " n.held_until as held_until, c.site as site from notice n"
                    + " join notice_callout nc on nc.notice = n.id join callout c on c.id = nc.callout"
                    + " where n.queued_at >= ? and n.queued_at < ? and n.handed_over_at is not null"
                    + " and coalesce(n.purpose, 'call') = 'call' and c.started_at >= ?";

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
     * @return empty when there are more, or far more lines about them than that
     */
    public Optional<Past> between(Optional<Set<String>> sites, Instant from, Instant to, int most) {
        Instant until = to.plus(Past.AFTER);
        List<PastDeed> deeds = deeds(sites, from, until, most * LINES_OF_AN_ALARM);
        long began = deeds.stream()
                .filter(deed -> deed.what() == PastDeed.What.BEGAN && deed.at().isBefore(to))
                .count();
        return began > most || deeds.size() >= most * LINES_OF_AN_ALARM
                ? Optional.empty()
                : Optional.of(new Past(from, to, deeds, texts(sites, from, until), priorities(deeds)));
    }

    private List<PastDeed> deeds(Optional<Set<String>> sites, Instant from, Instant until, int lines) {
        var values = new ArrayList<Object>(List.of(Column.stored(from), Column.stored(until)));
        var deeds = new ArrayList<PastDeed>();
        RowByRow.each(
                jdbc,
                LINES + of(sites, OF_SITES, values) + " order by logged_at, line fetch first " + lines + " rows only",
                rows -> {
                    var row = new Row(rows);
                    deeds.addAll(PastDeed.read(
                            row.time("logged_at"),
                            row.text("what"),
                            LogColumns.about(row.text("about")),
                            row.text("words")));
                },
                values.toArray());
        return deeds;
    }

    private static String of(Optional<Set<String>> sites, String condition, List<Object> values) {
        sites.ifPresent(some -> values.add(some.toArray(String[]::new)));
        return sites.map(some -> condition).orElse("");
    }

    /** A bundle has a row for each callout, and is one text. */
    private List<PastText> texts(Optional<Set<String>> sites, Instant from, Instant until) {
        var values = new ArrayList<Object>(List.of(Column.stored(from), Column.stored(until), Column.stored(from)));
        var texts = new LinkedHashMap<String, PastText>();
        RowByRow.each(
                jdbc,
                TEXTS + of(sites, " and c.site = any(?)", values) + " order by n.queued_at, n.id",
                rows -> {
                    var row = new Row(rows);
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
                },
                values.toArray());
        return List.copyOf(texts.values());
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
