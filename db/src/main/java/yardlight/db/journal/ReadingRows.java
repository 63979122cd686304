package yardlight.db.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yardlight.db.reading.PackedDay;
import yardlight.db.reading.Series;
import yardlight.db.reading.Slot;

/** The readings of one transaction: which are new, and where they go. */
public final class ReadingRows {

    /** What becomes of a reading. */
    public enum Fate {
        /** It is new and is stored. */
        KEPT,
        /** There is one of this point and time already; that one stays. */
        REPEATED,
        /** Its time lies where readings have been summed up, or further back than they are kept. */
        TOO_OLD
    }

    private static final String SERIES = Series.SELECT
            + " where site = ? and point = ? order by site desc, point desc, id desc fetch first 1 row only";
    private static final String LAST_SERIES = "select coalesce(max(id), 0) as id from reading_series";
    private static final String NEW_SERIES =
            "insert into reading_series (id, site, point, unit, summed_to) values (?, ?, ?, ?, 0)";
    private static final String UNIT = "update reading_series set unit = ? where id = ?";
    private static final String TAKEN = "select slot from reading where slot = any(?)";
    private static final String DAYS = "select slot, packed from reading_day where slot = any(?)";
    private static final String NEW = "insert into reading (slot, measured) values (?, ?)";

    private record Day(long slot, PackedDay packed) {}

    private final Pen pen;
    private final Map<String, Series> series = new HashMap<>();
    /** In the order of the table, so that what lies together is written together. */
    private final Map<Long, Double> fresh = new TreeMap<>();

    ReadingRows(Pen pen) {
        this.pen = pen;
    }

    /** In which the readings of a point are stored. */
    public Optional<Series> series(String site, String point) {
        String name = site + "/" + point;
        if (!series.containsKey(name)) {
            pen.read(
                            SERIES,
                            (statement, none) -> {
                                statement.setString(1, site);
                                statement.setString(2, point);
                            },
                            Series::from)
                    .forEach(found -> series.put(name, found));
        }
        return Optional.ofNullable(series.get(name));
    }

    /** Begins another series for a point. */
    public Series open(String site, String point, Optional<String> unit) {
        int last = pen.read(LAST_SERIES, (statement, none) -> {}, row -> row.number("id"))
                .get(0);
        if (last >= Slot.MOST_SERIES) {
            throw new IllegalStateException("there are as many series of readings as there can be: " + last);
        }
        var opened = new Series(last + 1, site, point, unit, 0);
        pen.write(NEW_SERIES, List.of(opened), (statement, one) -> {
            statement.setInt(1, one.id());
            statement.setString(2, one.site());
            statement.setString(3, one.point());
            statement.setString(4, one.unit().orElse(null));
        });
        series.put(site + "/" + point, opened);
        return opened;
    }

    /** Gives a unit to a series that has none. */
    public Series adopt(Series known, String unit) {
        Series named = known.in(Optional.of(unit));
        pen.write(UNIT, List.of(named), (statement, one) -> {
            statement.setString(1, unit);
            statement.setInt(2, one.id());
        });
        series.put(named.site() + "/" + named.point(), named);
        return named;
    }

    /**
     * What becomes of each of these, in order. The second of two that are the same is repeated.
     *
     * @param now when the transaction is
     */
    public List<Fate> fates(List<ReadingRecord> readings, Instant now) {
        Set<Long> taken = taken(readings);
        taken.addAll(fresh.keySet());
        Map<Long, PackedDay> days = days(readings, now.minus(PackedDay.NEVER));
        var fates = new ArrayList<Fate>();
        for (ReadingRecord reading : readings) {
            PackedDay day = days.get(reading.day());
            if (day != null && !day.takes(reading.at())) {
                fates.add(day.summed() ? Fate.TOO_OLD : Fate.REPEATED);
            } else {
                fates.add(taken.add(reading.slot()) ? Fate.KEPT : Fate.REPEATED);
            }
        }
        return fates;
    }

    /** Loose ones are read before packed ones: what is packed in between is then seen twice, and not missed. */
    private Set<Long> taken(List<ReadingRecord> readings) {
        return new HashSet<>(
                among(TAKEN, readings.stream().map(ReadingRecord::slot).toList(), row -> row.big("slot")));
    }

    /** The packed days of those that are old enough to lie in one. */
    private Map<Long, PackedDay> days(List<ReadingRecord> readings, Instant packed) {
        List<Long> slots = readings.stream()
                .filter(reading -> reading.at().isBefore(packed))
                .map(ReadingRecord::day)
                .distinct()
                .toList();
        var days = new HashMap<Long, PackedDay>();
        among(
                        DAYS,
                        slots,
                        row -> new Day(
                                row.big("slot"), PackedDay.read(row.rows().getBytes("packed"))))
                .forEach(day -> days.put(day.slot(), day.packed()));
        return days;
    }

    private <T> List<T> among(String sql, Collection<Long> slots, Pen.Read<T> read) {
        if (slots.isEmpty()) {
            return List.of();
        }
        return pen.read(
                sql,
                (statement, none) ->
                        statement.setArray(1, statement.getConnection().createArrayOf("bigint", slots.toArray())),
                read);
    }

    /** It is stored with the transaction. */
    public void keep(ReadingRecord reading) {
        fresh.put(reading.slot(), reading.value());
    }

    void write() {
        pen.write(NEW, fresh.entrySet(), (statement, one) -> {
            statement.setLong(1, one.getKey());
            statement.setDouble(2, one.getValue());
        });
    }
}
