package yardlight.db.alarm;

import java.time.Instant;
import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;

/** Reads which points had alarms. */
@Repository
public class SeenPoints {

    private static final String SEEN = "select distinct site, point from alarm"
            + " where occurrence > 0 and occurred_at >= ? order by site, point";

    private final JdbcTemplate jdbc;

    SeenPoints(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** The points with an alarm that occurred at or after the instant, by site and id. */
    public List<SeenPoint> since(Instant instant) {
        return jdbc.query(
                SEEN,
                (rows, n) -> new SeenPoint(rows.getString("site"), rows.getString("point")),
                Column.stored(instant));
    }
}
