package yardlight.db.due;

import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.Column;

/**
 * Claims in memory: one process has an H2 file, and locking rows on H2 to skip the locked ones reads its way through all
 * that is due. Reads in the order of the index.
 */
final class H2Dues implements Dues {

    private static final String DUE =
            "select kind, subject, due_at from due where ready_at <= ? order by ready_at" + " fetch first %d rows only";
    private static final String NEXT =
            "select ready_at from due where ready_at > ? order by ready_at fetch first 1 rows only";

    private final JdbcTemplate jdbc;
    private final Set<DueKey> claimed = new HashSet<>();

    H2Dues(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public synchronized List<Due> claim(Instant now, int limit) {
        String sql = DUE.formatted(limit + claimed.size());
        List<Due> free = jdbc.query(sql, DueRow::read, Column.stored(now)).stream()
                .filter(due -> !claimed.contains(due.key()))
                .limit(limit)
                .toList();
        free.forEach(due -> claimed.add(due.key()));
        return free;
    }

    @Override
    public synchronized void done(Collection<DueKey> keys) {
        claimed.removeAll(keys);
    }

    @Override
    public synchronized void giveBack(Collection<DueKey> keys) {
        claimed.removeAll(keys);
    }

    @Override
    public Optional<Instant> next(Instant now) {
        return jdbc.query(NEXT, DueRow::time, Column.stored(now)).stream().findFirst();
    }
}
