package yardlight.db.alarm;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.AbsenceColumns;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;
import yardlight.db.columns.Slices;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.Verdict;

/** Reads silences: what each was taken for, and how often that was right. */
@Repository
public class Silences {

    /**
     * How often people were told one thing and it was held for another in the end.
     *
     * @param told with which verdict they were called
     * @param settled what it was taken for when the boxes were back
     */
    public record Tally(Verdict told, Verdict settled, long count) {}

    private static final String OF = AbsenceColumns.TABLE.among("alarm");
    private static final String TALLY = "select told, verdict, count(*) from silence"
            + " where ended_at is not null and found_at >= ? group by told, verdict order by told, verdict";

    private final JdbcTemplate jdbc;

    Silences(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** The silences of these alarms, by the alarm's id. */
    public Map<String, Absence> of(Collection<String> alarms) {
        return Slices.query(jdbc, OF, alarms, (rows, n) -> AbsenceColumns.read(new Row(rows))).stream()
                .collect(Collectors.toMap(Absence::alarm, Function.identity()));
    }

    /** The newest, newest first. */
    public List<Absence> newest(int most) {
        return read(" order by found_at desc, alarm fetch first " + most + " rows only");
    }

    /** Those that were found since then, newest first, and no more than so many. */
    public List<Absence> since(Instant found, int most) {
        return read(
                " where found_at >= ? order by found_at desc, alarm fetch first " + most + " rows only",
                Column.stored(found));
    }

    /** What became of the silences that were found since then and are over. */
    public List<Tally> tally(Instant since) {
        return jdbc.query(
                TALLY,
                (rows, n) -> new Tally(
                        AbsenceColumns.verdict(rows.getString(1)),
                        AbsenceColumns.verdict(rows.getString(2)),
                        rows.getLong(3)),
                Column.stored(since));
    }

    private List<Absence> read(String where, Object... values) {
        return jdbc.query(
                AbsenceColumns.TABLE.select() + where, (rows, n) -> AbsenceColumns.read(new Row(rows)), values);
    }
}
