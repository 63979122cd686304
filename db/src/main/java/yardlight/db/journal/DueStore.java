package yardlight.db.journal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.Column;
import yardlight.db.columns.GaugeColumns;
import yardlight.db.due.DueKey;
import yardlight.db.due.DueKey.Kind;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.swap.Offer;

/**
 * Keeps the due rows in step with the state that they follow from. Most changes need no statement here: nothing was due
 * and nothing is, or at the same time as before. What has just fired is written anew in any case.
 */
final class DueStore {

    private static final Logger LOG = LoggerFactory.getLogger(DueStore.class);
    private static final Duration AFTER_NOTHING = Duration.ofMinutes(1);
    private static final String DELETE = "delete from due where kind = ? and subject = ?";
    private static final String INSERT = "insert into due (due_at, ready_at, kind, subject) values (?, ?, ?, ?)";
    private static final String UPDATE =
            "update due set due_at = ?, ready_at = ?, claimed_by = null where kind = ? and subject = ?";

    private record Row(DueKey key, Instant at) {}

    private final Pen pen;
    private final Sheet sheet;
    private final Instant now;
    private final Set<DueKey> fired;
    private final Set<DueKey> anew;
    private final List<DueKey> deletes = new ArrayList<>();
    private final List<Row> inserts = new ArrayList<>();
    private final List<Row> updates = new ArrayList<>();

    DueStore(Pen pen, Sheet sheet, Extras extras, Instant now) {
        this.now = now;
        this.fired = Set.copyOf(extras.fired);
        this.pen = pen;
        this.sheet = sheet;
        this.anew = new LinkedHashSet<>(extras.fired);
        if (extras.everyAlarm) {
            sheet.alarms().forEach(alarm -> anew.add(key(alarm.key())));
        }
    }

    /** Comes back with the earliest time that was written. */
    Optional<Instant> write() {
        Changed changed = sheet.changed();
        var keys = new LinkedHashSet<>(anew);
        changed.alarms.values().forEach(alarm -> keys.add(key(alarm.key())));
        changed.callouts.keySet().forEach(id -> keys.add(new DueKey(Kind.CALLOUT, id)));
        changed.desks.keySet().forEach(contact -> keys.add(new DueKey(Kind.DESK, contact)));
        changed.desks.keySet().forEach(contact -> keys.add(new DueKey(Kind.WELL, contact)));
        changed.notices.keySet().forEach(id -> keys.add(new DueKey(Kind.NOTICE, id)));
        changed.boxes.keySet().forEach(box -> keys.add(new DueKey(Kind.BOX, box)));
        changed.gauges.keySet().forEach(gauge -> keys.add(new DueKey(Kind.GAUGE, GaugeColumns.id(gauge))));
        changed.standings.keySet().forEach(site -> keys.add(new DueKey(Kind.SHUT_IN, site)));
        changed.offers.keySet().forEach(id -> keys.add(new DueKey(Kind.SWAP, id)));
        keys.forEach(this::sort);
        pen.write(DELETE, deletes, (statement, key) -> {
            statement.setString(1, key.kind().word());
            statement.setString(2, key.subject());
        });
        inserts.addAll(write(UPDATE, updates));
        write(INSERT, inserts);
        return Stream.concat(inserts.stream(), updates.stream()).map(Row::at).min(Instant::compareTo);
    }

    /** Comes back with those that there was nothing to update for. */
    private List<Row> write(String sql, List<Row> rows) {
        return pen.write(sql, rows, (statement, row) -> {
            statement.setObject(1, Column.stored(row.at()));
            statement.setObject(2, Column.stored(row.at()));
            statement.setString(3, row.key().kind().word());
            statement.setString(4, row.key().subject());
        });
    }

    private void sort(DueKey key) {
        Optional<Instant> before = before(key);
        Optional<Instant> after = after(key);
        if (after.isPresent() && anew.contains(key)) {
            Instant at = after.get();
            updates.add(new Row(key, stuck(key, before, at) ? later(key, at) : at));
        } else if (anew.contains(key)) {
            deletes.add(key);
        } else if (before.isEmpty()) {
            after.ifPresent(at -> inserts.add(new Row(key, at)));
        } else if (after.isEmpty()) {
            deletes.add(key);
        } else if (mustMove(key, before.get(), after.get())) {
            updates.add(new Row(key, after.get()));
        }
    }

    /**
     * What moves a box's deadline further away leaves the row where it is, and so does a reading: it fires for nothing now and then, and
     * is then written anew. So a box that posts often costs no write here. But when even the deadline until now would have passed by the
     * time of the next post, going by the time since the last one, the row is moved at once: firing costs more.
     */
    private boolean mustMove(DueKey key, Instant before, Instant after) {
        return switch (key.kind()) {
            case BOX -> after.isBefore(before) || after.isAfter(before) && before.isBefore(nextPost(key.subject()));
            case GAUGE -> after.isBefore(before);
            default -> !after.equals(before);
        };
    }

    private Instant nextPost(String box) {
        Instant last = sheet.kept().boxes.get(box).heardAt();
        return now.plus(Duration.between(last, now));
    }

    private boolean stuck(DueKey key, Optional<Instant> before, Instant at) {
        return fired.contains(key)
                && !at.isAfter(now)
                && before.filter(at::equals).isPresent();
    }

    /** It fired and nothing came of it: a mistake of ours, which must not make the gateway spin. */
    private Instant later(DueKey key, Instant at) {
        LOG.warn("{} was due at {} and still is after firing; tried again in {}", key, at, AFTER_NOTHING);
        return now.plus(AFTER_NOTHING);
    }

    private Optional<Instant> before(DueKey key) {
        Kept kept = sheet.kept();
        return switch (key.kind()) {
            case ALARM ->
                Optional.ofNullable(kept.alarms.get(AlarmColumns.key(key.subject())))
                        .flatMap(this::dueAt);
            case CALLOUT ->
                Optional.ofNullable(kept.callouts.get(key.subject())).flatMap(Callout::dueAt);
            case DESK -> Optional.ofNullable(kept.desks.get(key.subject())).flatMap(Desk::dueAt);
            case NOTICE ->
                Optional.ofNullable(kept.notices.get(key.subject()))
                        .flatMap(one -> one.notice().dueAt());
            case BOX -> Optional.ofNullable(kept.boxes.get(key.subject())).flatMap(BoxWatch::deadline);
            case GAUGE ->
                Optional.ofNullable(kept.gauges.get(GaugeColumns.key(key.subject())))
                        .flatMap(Gauge::deadline);
            case WELL -> Optional.ofNullable(kept.desks.get(key.subject())).flatMap(DueStore::allsWell);
            case SHUT_IN ->
                Optional.ofNullable(kept.standings.get(key.subject())).flatMap(Standing::dueAt);
            case SWAP -> Optional.ofNullable(kept.offers.get(key.subject())).flatMap(Offer::dueAt);
        };
    }

    private Optional<Instant> after(DueKey key) {
        return switch (key.kind()) {
            case ALARM -> dueAt(sheet.alarm(AlarmColumns.key(key.subject())));
            case CALLOUT -> sheet.callout(key.subject()).flatMap(Callout::dueAt);
            case DESK -> sheet.desk(key.subject()).dueAt();
            case NOTICE -> sheet.notice(key.subject()).flatMap(Notice::dueAt);
            case BOX -> sheet.box(key.subject()).flatMap(BoxWatch::deadline);
            case GAUGE -> sheet.gauge(GaugeColumns.key(key.subject())).deadline();
            case WELL -> allsWell(sheet.desk(key.subject()));
            case SHUT_IN -> sheet.standing(key.subject()).dueAt();
            case SWAP -> sheet.offer(key.subject()).flatMap(Offer::dueAt);
        };
    }

    private static Optional<Instant> allsWell(Desk desk) {
        return desk.allsWell().map(Desk.AllsWellAt::at);
    }

    private Optional<Instant> dueAt(Alarm alarm) {
        AlarmKey key = alarm.key();
        return alarm.dueAt(sheet.setup().point(key.site(), key.point()).timing());
    }

    private static DueKey key(AlarmKey key) {
        return new DueKey(Kind.ALARM, AlarmColumns.key(key));
    }
}
