package yardlight.db.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;
import yardlight.db.columns.RowByRow;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.performance.PastAlarm;

/** Reads occurrences without what was done about them: an index leads to those of a time. */
@Repository
public class PastAlarms {

    /** What acknowledges an alarm because it was said to the gateway already, and is no person. */
    private static final String NOBODY = "shut-in";

    private final JdbcTemplate jdbc;

    PastAlarms(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Those that occurred from {@code from}, inclusive, to {@code to}, exclusive; oldest first.
     *
     * @param site empty for all sites
     * @param most so many, the oldest ones
     */
    public List<PastAlarm> between(Optional<String> site, Instant from, Instant to, int most) {
        return read(
                site, "occurred_at >= ? and occurred_at < ?", List.of(Column.stored(from), Column.stored(to)), most);
    }

    /**
     * Those that occurred before an instant and held then: of the last so many days, and whatever still holds.
     *
     * @param since occurred at or after this, unless it holds now
     */
    public List<PastAlarm> goingOn(Optional<String> site, Instant since, Instant at, int most) {
        var found = new ArrayList<>(read(
                site,
                "active = false and occurred_at >= ? and occurred_at < ? and returned_at > ?",
                List.of(Column.stored(since), Column.stored(at), Column.stored(at)),
                most));
        found.addAll(
                read(site, "live_site > '' and active = true and occurred_at < ?", List.of(Column.stored(at)), most));
        return List.copyOf(found);
    }

    private List<PastAlarm> read(Optional<String> site, String where, List<Object> values, int most) {
        var all = new ArrayList<Object>();
        site.ifPresent(all::add);
        all.addAll(values);
        String sql = AlarmColumns.TABLE.select() + " where occurrence > 0 and "
                + site.map(any -> "site = ? and ").orElse("") + where
                + " order by occurred_at fetch first " + most + " rows only";
        var found = new ArrayList<PastAlarm>();
        RowByRow.each(jdbc, sql, rows -> found.add(past(AlarmColumns.read(new Row(rows)))), all.toArray());
        return found;
    }

    /** The activations of earlier occurrences are remembered by those. */
    private static PastAlarm past(Alarm alarm) {
        Instant at = alarm.occurredAt().orElseThrow();
        return new PastAlarm(
                alarm.key(),
                alarm.priority(),
                alarm.callout().isPresent(),
                at,
                alarm.receivedAt().orElse(at),
                alarm.returnedAt().filter(over -> !alarm.active()),
                alarm.acknowledgedAt()
                        .filter(any ->
                                alarm.acknowledgedBy().filter(NOBODY::equals).isEmpty()),
                alarm.activations().stream().filter(at::isBefore).toList());
    }
}
