package yardlight.db.figures;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;

/** How much waits, and for how long. Each call is one query over what waits, not over what was. */
@Repository
public class Figures {

    private static final String BY_CHANNEL =
            "select channel, count(*) as waiting, min(queued_at) as oldest from outbox group by channel";

    /**
     * @param count how many
     * @param oldest since when the first of them has been waiting
     */
    public record Waiting(long count, Optional<Instant> oldest) {}

    private final JdbcTemplate jdbc;

    Figures(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Notices that no carrier has taken yet, those included whose next attempt is not due; held ones are not. */
    public Waiting queuedNotices() {
        return waiting("select count(*) as waiting, min(queued_at) as oldest from outbox");
    }

    /** The same for each channel by which any of them is to go. */
    public Map<String, Waiting> queuedByChannel() {
        var waiting = new HashMap<String, Waiting>();
        jdbc.query(BY_CHANNEL, rows -> {
            var row = new Row(rows);
            waiting.put(row.text("channel"), new Waiting(row.big("waiting"), row.maybeTime("oldest")));
        });
        return waiting;
    }

    /** What was due by {@code now} and has not been done. */
    public Waiting overdue(Instant now) {
        return waiting(
                "select count(*) as waiting, min(due_at) as oldest from due where due_at <= ?", Column.stored(now));
    }

    private Waiting waiting(String sql, Object... values) {
        return jdbc.queryForObject(
                sql,
                (rows, n) -> {
                    var row = new Row(rows);
                    return new Waiting(row.big("waiting"), row.maybeTime("oldest"));
                },
                values);
    }
}
