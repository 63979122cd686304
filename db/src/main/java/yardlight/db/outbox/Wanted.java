package yardlight.db.outbox;

import java.time.Instant;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;

/** The questions that both databases are asked in the same words. */
final class Wanted {

    private static final String QUEUED = "select count(*) from notice where id = ? and state = 'queued' and line = ?";
    private static final String FOLLOWED = "select count(*) from notice_callout n join due d on d.subject = n.callout"
            + " where n.notice = ? and d.kind = 'callout'";
    private static final String NEXT = "select min(ready_at) as ready_at from outbox where ready_at > ?";

    private Wanted() {}

    static boolean ask(JdbcTemplate jdbc, Outgoing outgoing) {
        Integer found = jdbc.queryForObject(
                QUEUED, Integer.class, outgoing.id(), outgoing.notice().line());
        return found != null && found > 0;
    }

    static boolean followed(JdbcTemplate jdbc, Outgoing outgoing) {
        Integer found = jdbc.queryForObject(FOLLOWED, Integer.class, outgoing.id());
        return found != null && found > 0;
    }

    static Optional<Instant> next(JdbcTemplate jdbc, Instant now) {
        return Optional.ofNullable(jdbc.queryForObject(
                NEXT, (rows, number) -> new Row(rows).maybeTime("ready_at").orElse(null), Column.stored(now)));
    }
}
