package yardlight.db.journal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.AlarmColumns.Occurrence;
import yardlight.db.columns.BoxColumns;
import yardlight.db.columns.CalloutColumns;
import yardlight.db.columns.DeskColumns;
import yardlight.db.columns.FloodColumns;
import yardlight.db.columns.FloodColumns.SiteFlood;
import yardlight.db.columns.Table;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.quiet.Desk;

/** Writes the changed state: each row once, inserts and updates apart, each in a batch. */
final class StateStore {

    private static final String SUPERSEDE =
            "update alarm set current_key = null, live_site = null, state = 'normal' where id = ?";
    private static final String DELETE = "delete from alarm where id = ?";

    private final Pen pen;
    private final Sheet sheet;

    StateStore(Pen pen, Sheet sheet) {
        this.pen = pen;
        this.sheet = sheet;
    }

    void write() {
        Changed changed = sheet.changed();
        Kept kept = sheet.kept();
        alarms(changed.alarms.values(), kept);
        save(CalloutColumns.TABLE, changed.callouts.values(), callout -> has(kept.callouts, callout, Callout::id));
        save(DeskColumns.TABLE, changed.desks.values(), desk -> has(kept.desks, desk, Desk::contact));
        save(BoxColumns.TABLE, changed.boxes.values(), watch -> has(kept.boxes, watch, BoxWatch::box));
        List<SiteFlood> floods = changed.floods.entrySet().stream()
                .map(one -> new SiteFlood(one.getKey(), one.getValue()))
                .toList();
        save(FloodColumns.TABLE, floods, flood -> has(kept.floods, flood, SiteFlood::site));
    }

    /** An older occurrence gives up its place before the new one takes it; one that never occurred leaves nothing. */
    private void alarms(Collection<Alarm> changed, Kept kept) {
        List<Alarm> followed = kept.alarms.values().stream()
                .filter(alarm -> !newest(alarm).id().equals(alarm.id()))
                .toList();
        pen.write(SUPERSEDE, ids(followed, alarm -> alarm.occurrence() > 0), (row, id) -> row.setString(1, id));
        pen.write(DELETE, ids(followed, alarm -> alarm.occurrence() == 0), (row, id) -> row.setString(1, id));
        List<Occurrence> rows = changed.stream()
                .filter(alarm -> alarm.occurrence() > 0 || newest(alarm).id().equals(alarm.id()))
                .map(alarm -> new Occurrence(alarm, newest(alarm).id().equals(alarm.id())))
                .toList();
        save(AlarmColumns.TABLE, rows, row -> {
            Alarm before = kept.alarms.get(row.alarm().key());
            return before != null && before.id().equals(row.alarm().id());
        });
    }

    private Alarm newest(Alarm alarm) {
        return sheet.alarm(alarm.key());
    }

    private static List<String> ids(List<Alarm> alarms, Predicate<Alarm> which) {
        return alarms.stream().filter(which).map(Alarm::id).toList();
    }

    private static <T> boolean has(Map<String, ?> kept, T row, Function<T, String> id) {
        return kept.containsKey(id.apply(row));
    }

    private <T> void save(Table<T> table, Collection<T> rows, Predicate<T> exists) {
        var inserts = new ArrayList<T>();
        var updates = new ArrayList<T>();
        rows.forEach(row -> (exists.test(row) ? updates : inserts).add(row));
        pen.insert(table, inserts);
        pen.update(table, updates);
    }
}
