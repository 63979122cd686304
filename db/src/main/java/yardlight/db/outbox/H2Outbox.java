package yardlight.db.outbox;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.Column;

/** Claims in memory: one process has an H2 file, and nothing is written for a claim. */
final class H2Outbox implements Outbox {

    private static final String CLAIM = "select " + OutboxRow.COLUMNS
            + " from outbox o join notice n on n.id = o.notice where o.channel %s and o.ready_at <= ?"
            + " order by o.channel, o.ready_at fetch first %d rows only";

    private final JdbcTemplate jdbc;
    private final Set<Claim> claimed = new HashSet<>();

    H2Outbox(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public synchronized List<Outgoing> claim(String channel, Instant now, int limit) {
        return claim("= ?", List.of(channel), now, limit);
    }

    @Override
    public synchronized List<Outgoing> claimOthers(Collection<String> channels, Instant now, int limit) {
        var known = new ArrayList<>(channels);
        known.add("");
        return claim("not in (" + OutboxRow.marks(known) + ")", known, now, limit);
    }

    private List<Outgoing> claim(String which, List<String> channels, Instant now, int limit) {
        var values = new ArrayList<Object>(channels);
        values.add(Column.stored(now));
        List<Outgoing> free =
                jdbc.query(CLAIM.formatted(which, limit + claimed.size()), OutboxRow::read, values.toArray()).stream()
                        .filter(outgoing -> !claimed.contains(Claim.of(outgoing)))
                        .limit(limit)
                        .toList();
        free.forEach(outgoing -> claimed.add(Claim.of(outgoing)));
        return free;
    }

    @Override
    public boolean wanted(Outgoing outgoing) {
        return Wanted.ask(jdbc, outgoing);
    }

    /** A claim in memory has no end. */
    @Override
    public void renew() {}

    @Override
    public synchronized void done(Outgoing outgoing) {
        claimed.remove(Claim.of(outgoing));
    }

    @Override
    public synchronized void giveBack(Outgoing outgoing) {
        claimed.remove(Claim.of(outgoing));
    }

    @Override
    public List<Outgoing> waiting(Instant from, Instant to, int limit) {
        return Wanted.waiting(jdbc, from, to, limit);
    }

    @Override
    public Optional<Instant> nextRung(Outgoing outgoing) {
        return Wanted.nextRung(jdbc, outgoing);
    }

    @Override
    public boolean followed(Outgoing outgoing) {
        return Wanted.followed(jdbc, outgoing);
    }

    @Override
    public Optional<Instant> next(Instant now) {
        return Wanted.next(jdbc, now);
    }
}
