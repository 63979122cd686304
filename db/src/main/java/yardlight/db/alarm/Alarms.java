package yardlight.db.alarm;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;

/** Reads alarms with everything that was done about them. */
@Repository
public class Alarms {

    private static final String NEWEST_FIRST = " order by occurred_at desc, id desc";
    private static final String BY_SITE = "select live_site, state, count(*) as alarms from alarm"
            + " where live_site > '' and occurrence > 0 group by live_site, state";

    private final JdbcTemplate jdbc;
    private final Stories stories;

    Alarms(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
        this.stories = new Stories(jdbc);
    }

    /** The alarms that fit, newest first. */
    public List<RecordedAlarm> find(AlarmFilter filter) {
        var where = new StringBuilder(" where occurrence > 0");
        var values = new ArrayList<Object>();
        filter.site().ifPresent(site -> and(where, values, "site = ?", site));
        filter.state().ifPresent(state -> and(where, values, "state = ?", state.word()));
        // Whatever is not normal is live: a short index instead of the whole table.
        filter.state().filter(state -> state != AlarmState.NORMAL).ifPresent(s -> where.append(" and live_site > ''"));
        filter.from().ifPresent(from -> and(where, values, "occurred_at >= ?", Column.stored(from)));
        filter.to().ifPresent(to -> and(where, values, "occurred_at < ?", Column.stored(to)));
        return read(where + NEWEST_FIRST + " fetch first " + filter.limit() + " rows only", values);
    }

    /** The occurrence with this id. */
    public Optional<RecordedAlarm> byId(String id) {
        return read(" where id = ?", List.of(id)).stream().findFirst();
    }

    /** What is not normal now, or has an on-delay running; the most urgent first, then the oldest. */
    public List<RecordedAlarm> current() {
        return read(" where live_site > '' and occurrence > 0", List.of()).stream()
                .sorted(MostUrgent.FIRST)
                .toList();
    }

    /** What is not normal now at one site, or has an on-delay running, without what was done about it; in no order. */
    public List<Alarm> currentAt(String site) {
        return jdbc.query(
                AlarmColumns.TABLE.select() + " where live_site = ? and occurrence > 0",
                (rows, n) -> AlarmColumns.read(new Row(rows)),
                site);
    }

    /** How many alarms are not normal now, and not withheld from people, at each site that has any. */
    public Map<String, Long> countedBySite() {
        var counted = new HashMap<String, Long>();
        jdbc.query(BY_SITE, rows -> {
            if (!AlarmColumns.state(rows.getString("state")).withheld()) {
                counted.merge(rows.getString("live_site"), rows.getLong("alarms"), Long::sum);
            }
        });
        return counted;
    }

    /** The newest occurrence of each alarm that a site ever had, without what was done about it. */
    public List<Alarm> newestAt(String site) {
        return jdbc.query(
                AlarmColumns.TABLE.select() + " where site = ? and current_key > '' and occurrence > 0",
                (rows, n) -> AlarmColumns.read(new Row(rows)),
                site);
    }

    /**
     * The occurrences that held at some moment from {@code from}, inclusive, to {@code to}, exclusive, without what was done
     * about them; newest first.
     */
    public List<Alarm> during(String site, Instant from, Instant to, int most) {
        return jdbc.query(
                AlarmColumns.TABLE.select() + " where site = ? and occurrence > 0 and occurred_at < ?"
                        + " and (active = true or returned_at >= ?)" + NEWEST_FIRST + " fetch first " + most
                        + " rows only",
                (rows, n) -> AlarmColumns.read(new Row(rows)),
                site,
                Column.stored(to),
                Column.stored(from));
    }

    /** These callouts with their notices, whatever alarm they were for first; in no order. */
    public List<RecordedCallout> callouts(Collection<String> ids) {
        return stories.callouts(ids);
    }

    private List<RecordedAlarm> read(String where, List<Object> values) {
        List<Alarm> alarms = jdbc.query(
                AlarmColumns.TABLE.select() + where, (rows, n) -> AlarmColumns.read(new Row(rows)), values.toArray());
        return stories.of(alarms);
    }

    private static void and(StringBuilder where, List<Object> values, String condition, Object value) {
        where.append(" and ").append(condition);
        values.add(value);
    }
}
