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
import java.util.function.LongSupplier;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.Column;

/**
 * Claims in the table, past the rows that another gateway is claiming at the same time. A lease begins and ends by the
 * clock of the database, so that gateways whose own clocks differ leave each other's alone; when one is to be renewed goes
 * by the time that passes here.
 */
final class PostgresOutbox implements Outbox {

    /** Short, so that another gateway goes on within 5 s of a death; renewed while a slow carrier takes its time. */
    private static final Duration LEASE = Duration.ofSeconds(3);

    /** What has less left than this is renewed; most notices are gone before. */
    private static final Duration RENEW_BELOW = Duration.ofSeconds(2);

    private static final String END = "clock_timestamp() + interval '" + LEASE.toMillis() + " milliseconds'";

    private static final String CLAIM = """
            with picked as (
                select notice from outbox where channel %s and ready_at <= ?
                    and (claimed_by is null or leased_until is null or leased_until <= clock_timestamp())
                order by channel, ready_at limit ? for update skip locked),
            claimed as (
                update outbox set claimed_by = ?, leased_until = <end> where notice in (select notice from picked)
                returning notice, channel, queued_at, deferrals, doubts)
            """.replace("<end>", END) + "select " + OutboxRow.COLUMNS
            + " from claimed o join notice n on n.id = o.notice";

    /** The row as it was claimed: the notice may be there again for another line. */
    private static final String MINE = " where notice = ? and claimed_by = ? and queued_at = ?";

    private static final String RENEW = "update outbox set leased_until = " + END + MINE;

    /** Waits for nobody: a row that the writer is storing at this moment needs no lease any more. */
    private static final String RENEW_ALL = "update outbox set leased_until = " + END + " where notice in ("
            + "select notice from outbox where notice in (%s) and claimed_by = ? for update skip locked)";

    private static final String GIVE_BACK = "update outbox set claimed_by = null" + MINE;

    private final JdbcTemplate jdbc;
    private final String claimer;
    private final LongSupplier nanos;
    private final Map<Claim, Long> leases = new ConcurrentHashMap<>();

    PostgresOutbox(JdbcTemplate jdbc, String claimer, LongSupplier nanos) {
        this.jdbc = jdbc;
        this.claimer = claimer;
        this.nanos = nanos;
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
        values.add(claimer);
        long end = endOfLease();
        List<Outgoing> claimed = jdbc.query(CLAIM.formatted(which), OutboxRow::read, values.toArray()).stream()
                .sorted(Comparator.comparing(Outgoing::queuedAt).thenComparing(Outgoing::id))
                .toList();
        claimed.forEach(outgoing -> leases.put(Claim.of(outgoing), end));
        return claimed;
    }

    @Override
    public boolean wanted(Outgoing outgoing) {
        long end = endOfLease();
        int ours = jdbc.update(RENEW, outgoing.id(), claimer, Column.stored(outgoing.queuedAt()));
        leases.replace(Claim.of(outgoing), end);
        return ours > 0 && Wanted.ask(jdbc, outgoing);
    }

    @Override
    public void renew() {
        long end = endOfLease();
        List<Claim> ending = leases.entrySet().stream()
                .filter(lease ->
                        end - lease.getValue() > LEASE.minus(RENEW_BELOW).toNanos())
                .map(Map.Entry::getKey)
                .toList();
        if (ending.isEmpty()) {
            return;
        }
        var values = new ArrayList<Object>();
        ending.forEach(claim -> values.add(claim.notice()));
        values.add(claimer);
        jdbc.update(RENEW_ALL.formatted(OutboxRow.marks(ending)), values.toArray());
        ending.forEach(claim -> leases.replace(claim, end));
    }

    /** By the time that passes here, taken before the database is asked: its own begins no earlier. */
    private long endOfLease() {
        return nanos.getAsLong() + LEASE.toNanos();
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
