package yardlight.db.journal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import yardlight.db.columns.AbsenceColumns;
import yardlight.db.columns.AbsenceColumns.Placed;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.AlarmColumns.Occurrence;
import yardlight.db.columns.BoxColumns;
import yardlight.db.columns.CalloutColumns;
import yardlight.db.columns.DeskColumns;
import yardlight.db.columns.FloodColumns;
import yardlight.db.columns.FloodColumns.SiteFlood;
import yardlight.db.columns.GaugeColumns;
import yardlight.db.columns.LineColumns;
import yardlight.db.columns.ShutInColumns;
import yardlight.db.columns.SwapColumns;
import yardlight.db.columns.Table;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.heartbeat.Absence;

/** Writes the changed state: each row once, inserts and updates apart, each in a batch. */
final class StateStore {

    private static final String SUPERSEDE =
            "update alarm set current_key = null, live_site = null, state = 'normal' where id = ?";
    private static final String OUTDATE = "update silence set newest_on = null where newest_on = ? and alarm <> ?";
    private static final String REPLACE = "delete from silence where alarm = ?";
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
        save(CalloutColumns.TABLE, changed.callouts.values(), callout -> kept.callouts.get(callout.id()));
        save(DeskColumns.TABLE, changed.desks.values(), desk -> kept.desks.get(desk.contact()));
        save(BoxColumns.TABLE, changed.boxes.values(), watch -> kept.boxes.get(watch.box()));
        absences(changed.absences.values(), kept);
        save(ShutInColumns.TABLE, changed.standings.values(), one -> kept.standings.get(one.site()));
        save(SwapColumns.TABLE, changed.offers.values(), one -> kept.offers.get(one.id()));
        save(LineColumns.TABLE, changed.lines.values(), line -> kept.lines.get(line.key()));
        save(GaugeColumns.TABLE, changed.gauges.values(), gauge -> kept.gauges.get(gauge.key()));
        List<SiteFlood> floods = changed.floods.entrySet().stream()
                .map(one -> new SiteFlood(one.getKey(), one.getValue()))
                .toList();
        save(
                FloodColumns.TABLE,
                floods,
                flood -> kept.floods.containsKey(flood.site())
                        ? new SiteFlood(flood.site(), kept.floods.get(flood.site()))
                        : null);
    }

    /** An older occurrence gives up its place before the new one takes it; one that never occurred leaves nothing. */
    private void alarms(Collection<Alarm> changed, Kept kept) {
        List<Alarm> followed = changed.stream()
                .map(Alarm::key)
                .distinct()
                .flatMap(key -> Stream.ofNullable(kept.alarms.get(key)))
                .filter(alarm -> !isNewest(alarm))
                .toList();
        pen.write(SUPERSEDE, ids(followed, alarm -> alarm.occurrence() > 0), (row, id) -> row.setString(1, id));
        pen.write(DELETE, ids(followed, alarm -> alarm.occurrence() == 0), (row, id) -> row.setString(1, id));
        List<Occurrence> rows = changed.stream()
                .filter(alarm -> alarm.occurrence() > 0 || isNewest(alarm))
                .map(alarm -> new Occurrence(alarm, isNewest(alarm)))
                .toList();
        save(AlarmColumns.TABLE, rows, row -> {
            Alarm before = kept.alarms.get(row.alarm().key());
            boolean same = before != null && before.id().equals(row.alarm().id());
            return same ? new Occurrence(before, true) : null;
        });
    }

    /**
     * An older silence gives up its place before the new one takes it. An occurrence of an alarm can come back and be the
     * silence of something else: then the row that it had gives way.
     */
    private void absences(Collection<Absence> changed, Kept kept) {
        List<Absence> newest = changed.stream().filter(this::isNewest).toList();
        pen.write(OUTDATE, newest, (row, absence) -> {
            row.setString(1, AbsenceColumns.path(absence.path()));
            row.setString(2, absence.alarm());
        });
        List<Absence> fresh = changed.stream()
                .filter(absence -> !kept.absences.containsKey(absence.alarm()))
                .toList();
        pen.write(REPLACE, fresh, (row, absence) -> row.setString(1, absence.alarm()));
        List<Placed> rows = changed.stream()
                .map(absence -> new Placed(absence, isNewest(absence)))
                .toList();
        save(AbsenceColumns.TABLE, rows, row -> {
            Absence before = kept.absences.get(row.absence().alarm());
            return before == null ? null : new Placed(before, true);
        });
    }

    private boolean isNewest(Absence absence) {
        return sheet.absence(absence.path())
                .filter(newest -> newest.alarm().equals(absence.alarm()))
                .isPresent();
    }

    private boolean isNewest(Alarm alarm) {
        return sheet.alarm(alarm.key()).id().equals(alarm.id());
    }

    private static List<String> ids(List<Alarm> alarms, Predicate<Alarm> which) {
        return alarms.stream().filter(which).map(Alarm::id).toList();
    }

    /** A decision may put down what is as it was, such as the other alarms of a flood: that is not written. */
    private <T> void save(Table<T> table, Collection<T> rows, UnaryOperator<T> stored) {
        var inserts = new ArrayList<T>();
        var updates = new ArrayList<T>();
        for (T row : rows) {
            T before = stored.apply(row);
            if (before == null) {
                inserts.add(row);
            } else if (!before.equals(row)) {
                updates.add(row);
            }
        }
        pen.insert(table, inserts);
        pen.update(table, updates);
    }
}
