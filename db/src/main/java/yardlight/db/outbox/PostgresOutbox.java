package yardlight.db.outbox;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.Column;

/** Claims in the table, past the rows that another gateway is claiming at the same time. */
final class PostgresOutbox implements Outbox {

    /** Short, so that another gateway goes on within 5 s of a death; renewed while a slow carrier takes its time. */
    private static final Duration LEASE = Duration.ofSeconds(3);

    /** What has less left than this is renewed; most notices are gone before. */
    private static final Duration RENEW_BELOW = Duration.ofSeconds(2);

    private static final String CLAIM =
            """
            with picked as (
                select notice from outbox where channel %s and ready_at <= ?
                order by channel, ready_at limit ? for update skip locked),
            claimed as (
                update outbox set ready_at = ?, claimed_by = ? where notice in (select notice from picked)
                returning notice, channel, queued_at, deferrals, doubts)
            """ + "select " + OutboxRow.COLUMNS + " from claimed o join notice n on n.id = o.notice";

    /** The row as it was claimed: the notice may be there again for another line. */
    private static final String MINE = " where notice = ? and claimed_by = ? and queued_at = ?";

    private static final String RENEW = "update outbox set ready_at = ?" + MINE;

    /** Waits for nobody: a row that the writer is storing at this moment needs no lease any more. */
    private static final String RENEW_ALL = """
            update outbox set ready_at = ? where notice in (
                select notice from outbox where notice in (%s) and claimed_by = ? for update skip locked)
            """;

    private static final String GIVE_BACK = "update outbox set ready_at = queued_at, claimed_by = null" + MINE;

    private final JdbcTemplate jdbc;
    private final String claimer;
    private final Map<Claim, Instant> leases = new ConcurrentHashMap<>();

    PostgresOutbox(JdbcTemplate jdbc, String claimer) {
        this.jdbc = jdbc;
        this.claimer = claimer;
    }

    @Override
    public List<Outgoing> claim(String channel, Instant now, int limit) {
        return claim("= ?", List.of(channel), now, limit);
    }

    @Override
    public List<Outgoing> claimOthers(Collection<String> channels, Instant now, int limit) {
        var known = new ArrayList<>(channels);
        known.add("");
        return claim("not in (" + OutboxRow.marks(known) + ")", known, now, limit);
    }

    private List<Outgoing> claim(String which, List<String> channels, Instant now, int limit) {
        var values = new ArrayList<Object>(channels);
        values.add(Column.stored(now));
        values.add(limit);
        values.add(Column.stored(now.plus(LEASE)));
        values.add(claimer);
        List<Outgoing> claimed = jdbc.query(CLAIM.formatted(which), OutboxRow::read, values.toArray()).stream()
                .sorted(Comparator.comparing(Outgoing::queuedAt).thenComparing(Outgoing::id))
                .toList();
        claimed.forEach(outgoing -> leases.put(Claim.of(outgoing), now.plus(LEASE)));
        return claimed;
    }

    @Override
    public boolean wanted(Outgoing outgoing, Instant now) {
        int ours = jdbc.update(
                RENEW, Column.stored(now.plus(LEASE)), outgoing.id(), claimer, Column.stored(outgoing.queuedAt()));
        leases.replace(Claim.of(outgoing), now.plus(LEASE));
        return ours > 0 && Wanted.ask(jdbc, outgoing);
    }

    @Override
    public void renew(Instant now) {
        Instant before = now.plus(RENEW_BELOW);
        List<Claim> ending = leases.entrySet().stream()
                .filter(lease -> lease.getValue().isBefore(before))
                .map(Map.Entry::getKey)
                .toList();
        if (ending.isEmpty()) {
            return;
        }
        var values = new ArrayList<Object>(List.of(Column.stored(now.plus(LEASE))));
        ending.forEach(claim -> values.add(claim.notice()));
        values.add(claimer);
        jdbc.update(RENEW_ALL.formatted(OutboxRow.marks(ending)), values.toArray());
        ending.forEach(claim -> leases.replace(claim, now.plus(LEASE)));
    }

    /** The writer has taken the row out, or put it off. */
    @Override
    public void done(Outgoing outgoing) {
        leases.remove(Claim.of(outgoing));
    }

    @Override
    public void giveBack(Outgoing outgoing) {
        leases.remove(Claim.of(outgoing));
        jdbc.update(GIVE_BACK, outgoing.id(), claimer, Column.stored(outgoing.queuedAt()));
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
