package yardlight.db.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import yardlight.db.columns.Row;

/**
 * Makes readings smaller with age, one series after the other, each step of it a transaction of its own beside the lane:
 * packs those that are a few hours old, sums up those that need not be whole any more, and lets go of the rest.
 *
 * <p>None of that waits for the disk: if the power is cut, the file goes back to where it was, and it is done again.
 */
@Component
public class Upkeep {

    private static final Logger LOG = LoggerFactory.getLogger(Upkeep.class);

    /**
     * What is older is packed. Twice {@link PackedDay#NEVER}, so that a clock that is a little off makes no difference: the lane does not
     * look for newer readings among those that are packed.
     */
    private static final Duration AFTER = PackedDay.NEVER.multipliedBy(2);

    private static final String ALL = Series.SELECT + " order by id";
    private static final String LOOSE = "select slot, measured from reading where slot >= ? and slot < ? order by slot";
    private static final String DROP = "delete from reading where slot >= ? and slot < ?";
    private static final String PACKED = "select packed from reading_day where slot = ?";
    private static final String PACKED_FROM_TO =
            "select slot, packed from reading_day where slot >= ? and slot < ? order by slot";
    private static final String REPLACE = "update reading_day set packed = ? where slot = ?";
    private static final String ADD = "insert into reading_day (packed, slot) values (?, ?)";
    private static final String FORGET = "delete from reading_day where slot >= ? and slot < ?";
    private static final String SUMMED = "update reading_series set summed_to = ? where id = ?";

    /**
     * What was done.
     *
     * @param packed readings
     * @param summed days of a series
     * @param forgotten days of a series
     */
    public record Done(int packed, int summed, int forgotten) {

        Done and(Done other) {
            return new Done(packed + other.packed, summed + other.summed, forgotten + other.forgotten);
        }

        public boolean nothing() {
            return packed + summed + forgotten == 0;
        }
    }

    private final JdbcTemplate jdbc;
    private final TransactionTemplate transaction;

    public Upkeep(JdbcTemplate jdbc, PlatformTransactionManager transactions) {
        this.jdbc = jdbc;
        this.transaction = new TransactionTemplate(transactions);
    }

    /** Does what there is to do at {@code now}. */
    public Done run(Keep keep, Instant now) {
        var all = new Done(0, 0, 0);
        for (Series series : jdbc.query(ALL, (rows, n) -> Series.from(new Row(rows)))) {
            all = all.and(run(series, keep, now));
        }
        return all;
    }

    private Done run(Series series, Keep keep, Instant now) {
        int packed = 0;
        long end = Slot.of(series.id(), now.minus(AFTER));
        for (Map.Entry<Integer, List<Sample>> day : over(series.id(), end).entrySet()) {
            packed += pack(series, day.getKey(), end, day.getValue(), keep.step());
        }
        int summed = sum(series, Slot.day(now.minus(keep.whole())), keep.step());
        return new Done(packed, summed, forget(series.id(), Slot.day(now.minus(keep.all()))));
    }

    /** The loose readings of before, by their day. */
    private Map<Integer, List<Sample>> over(int series, long end) {
        var days = new TreeMap<Integer, List<Sample>>();
        jdbc.query(
                LOOSE,
                rows -> {
                    Sample sample = Sample.one(Slot.at(rows.getLong("slot")), rows.getDouble("measured"));
                    days.computeIfAbsent(Slot.day(sample.at()), day -> new ArrayList<>())
                            .add(sample);
                },
                Slot.startOf(series, 0),
                end);
        return days;
    }

    /** One that came in the meantime is neither packed nor lost: all of the day is left for the next time. */
    private int pack(Series series, int day, long end, List<Sample> readings, Duration step) {
        Boolean packed = transaction.execute(status -> {
            long slot = Slot.ofDay(series.id(), day);
            PackedDay more = jdbc.query(PACKED, (rows, n) -> PackedDay.read(rows.getBytes("packed")), slot).stream()
                    .findFirst()
                    .orElseGet(PackedDay::empty)
                    .with(readings);
            byte[] bytes = (day < series.summedTo() ? more.summed(step) : more).bytes();
            if (jdbc.update(REPLACE, bytes, slot) == 0) {
                jdbc.update(ADD, bytes, slot);
            }
            long from = Slot.startOf(series.id(), day);
            int dropped = jdbc.update(DROP, from, Math.min(end, Slot.startOf(series.id(), day + 1)));
            if (dropped != readings.size()) {
                LOG.debug("series {} day {}: {} readings, {} dropped", series.id(), day, readings.size(), dropped);
                status.setRollbackOnly();
            }
            return dropped == readings.size();
        });
        return Boolean.TRUE.equals(packed) ? readings.size() : 0;
    }

    private int sum(Series series, int before, Duration step) {
        if (before <= series.summedTo()) {
            return 0;
        }
        Integer days = transaction.execute(status -> {
            var sums = new TreeMap<Long, byte[]>();
            jdbc.query(
                    PACKED_FROM_TO,
                    rows -> {
                        PackedDay day = PackedDay.read(rows.getBytes("packed"));
                        sums.put(rows.getLong("slot"), day.summed(step).bytes());
                    },
                    Slot.ofDay(series.id(), series.summedTo()),
                    Slot.ofDay(series.id(), before));
            sums.forEach((slot, bytes) -> jdbc.update(REPLACE, bytes, slot));
            jdbc.update(SUMMED, before, series.id());
            return sums.size();
        });
        return days == null ? 0 : days;
    }

    private int forget(int series, int before) {
        jdbc.update(DROP, Slot.startOf(series, 0), Slot.startOf(series, before));
        return jdbc.update(FORGET, Slot.ofDay(series, 0), Slot.ofDay(series, before));
    }
}
