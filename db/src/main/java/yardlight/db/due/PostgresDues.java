package yardlight.db.due;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.Column;

/**
 * Claims in the table, past the rows that another gateway is claiming at the same time. A lease begins and ends by the
 * clock of the database, so that gateways whose own clocks differ leave each other's alone.
 */
final class PostgresDues implements Dues {

    /** Long enough for the writer, short enough that a rung waits little for a gateway that died. */
    private static final Duration LEASE = Duration.ofSeconds(3);

    private static final String CLAIM = """
            update due set claimed_by = ?, leased_until = clock_timestamp() + ? * interval '1 millisecond'
            where (kind, subject) in (
                select kind, subject from due where ready_at <= ?
                    and (claimed_by is null or leased_until is null or leased_until <= clock_timestamp())
                order by ready_at limit ? for update skip locked)
            returning kind, subject, due_at
            """;
    private static final String GIVE_BACK =
            "update due set claimed_by = null where kind = ? and subject = ? and claimed_by = ?";
    private static final String NEXT = "select ready_at from due where ready_at > ? order by ready_at limit 1";

    private final JdbcTemplate jdbc;
    private final String claimer;

    PostgresDues(JdbcTemplate jdbc, String claimer) {
        this.jdbc = jdbc;
        this.claimer = claimer;
    }

    @Override
    public List<Due> claim(Instant now, int limit) {
        return jdbc.query(CLAIM, DueRow::read, claimer, LEASE.toMillis(), Column.stored(now), limit).stream()
                .sorted(Comparator.comparing(Due::at))
                .toList();
    }

    /** The writer has taken the claim off with its own change of the row. */
    @Override
    public void done(Collection<DueKey> keys) {}

    @Override
    public void giveBack(Collection<DueKey> keys) {
        jdbc.batchUpdate(
                GIVE_BACK,
                keys.stream()
                        .map(key -> new Object[] {key.kind().word(), key.subject(), claimer})
                        .toList());
    }

    @Override
    public Optional<Instant> next(Instant now) {
        return jdbc.query(NEXT, DueRow::time, Column.stored(now)).stream().findFirst();
    }
}
