package yardlight.db.outbox;

import java.time.Instant;
import java.util.List;
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

    private static final String WAITING = "select " + OutboxRow.COLUMNS
            + " from outbox o join notice n on n.id = o.notice where o.queued_at > ? and o.queued_at <= ?"
            + " order by o.queued_at fetch first %d rows only";
    private static final String NEXT_RUNG = "select min(c.due_at) as ready_at from notice_callout l"
            + " join callout c on c.id = l.callout where l.notice = ?";

    private Wanted() {}

    static List<Outgoing> waiting(JdbcTemplate jdbc, Instant from, Instant to, int limit) {
        return jdbc.query(WAITING.formatted(limit), OutboxRow::read, Column.stored(from), Column.stored(to));
    }

    static Optional<Instant> nextRung(JdbcTemplate jdbc, Outgoing outgoing) {
        return Optional.ofNullable(jdbc.queryForObject(
                NEXT_RUNG, (rows, number) -> new Row(rows).maybeTime("ready_at").orElse(null), outgoing.id()));
    }

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
