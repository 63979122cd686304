package yardlight.db.reading;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Row;

/** Reads back what was measured, each reading once, whether it lies loose or packed. */
@Repository
public class Readings {

    private static final String OF_POINT = Series.SELECT
            + " where site = ? and point = ? order by site desc, point desc, id desc fetch first 1 row only";
    private static final String LOOSE = "select slot, measured from reading where slot >= ? and slot < ? order by slot";
    private static final String PACKED =
            "select slot, packed from reading_day where slot >= ? and slot <= ? order by slot";
    /** The last slot of each series is found by the key; a day is fetched only of a series that has nothing loose. */
    private static final String NEWEST = "select q.*, r.measured, d.packed from (select s.id, s.site, s.point, s.unit,"
            + " s.summed_to, " + last("reading", Slot.of(1, Slot.FIRST)) + " as last_loose, "
            + last("reading_day", Slot.ofDay(1, 0)) + " as last_packed from reading_series s where s.site = ?) q"
            + " left join reading r on r.slot = q.last_loose"
            + " left join reading_day d on d.slot = q.last_packed and q.last_loose is null order by q.point, q.id";

    private static final int LAST_DAY = (1 << 15) - 1;

    private final JdbcTemplate jdbc;

    public Readings(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** @param width how many slots a series has in this table */
    private static String last(String table, long width) {
        return "(select t.slot from " + table + " t where t.slot >= cast(s.id as bigint) * " + width
                + " and t.slot <= cast(s.id as bigint) * " + width + " + " + (width - 1)
                + " order by t.slot desc fetch first 1 row only)";
    }

    /** The series in which readings of a point are stored now; empty when it never had one. */
    public Optional<Series> of(String site, String point) {
        return jdbc.query(OF_POINT, (rows, n) -> Series.from(new Row(rows)), site, point).stream()
                .findFirst();
    }

    /**
     * What a point measured, in the unit of its series. Of what is older than readings are kept whole the samples are sums; and
     * all are sums when there are more than wanted.
     *
     * @param from inclusive
     * @param to exclusive
     * @param most samples, at least 1
     * @throws IllegalArgumentException when it is less
     */
    public Curve series(String site, String point, Instant from, Instant to, int most) {
        if (most < 1) {
            throw new IllegalArgumentException("most must be at least 1: " + most);
        }
        return of(site, point)
                .map(series -> new Curve(series.unit(), samples(series.id(), from, to, most)))
                .orElse(Curve.NONE);
    }

    private List<Sample> samples(int series, Instant from, Instant to, int most) {
        int first = Math.min(Slot.day(from), LAST_DAY);
        int last = Math.min(Slot.day(to), LAST_DAY);
        if (!from.isBefore(to)) {
            return List.of();
        }
        // Loose ones first: what is packed in between is then seen twice, and not missed.
        Map<Integer, List<Sample>> loose = loose(series, first, last + 1);
        var stretch = new Stretch(from, to, most);
        jdbc.query(
                PACKED,
                rows -> {
                    int day = Slot.day(rows.getLong("slot"));
                    PackedDay packed = PackedDay.read(rows.getBytes("packed"));
                    packed.samples().forEach(stretch::add);
                    Optional.ofNullable(loose.get(day))
                            .ifPresent(late -> late.removeIf(sample -> !packed.takes(sample.at())));
                },
                Slot.ofDay(series, first),
                Slot.ofDay(series, last));
        loose.values().forEach(samples -> samples.forEach(stretch::add));
        return stretch.samples();
    }

    private Map<Integer, List<Sample>> loose(int series, int firstDay, int endDay) {
        var loose = new LinkedHashMap<Integer, List<Sample>>();
        jdbc.query(
                LOOSE,
                rows -> {
                    Sample sample = Sample.one(Slot.at(rows.getLong("slot")), rows.getDouble("measured"));
                    loose.computeIfAbsent(Slot.day(sample.at()), day -> new ArrayList<>())
                            .add(sample);
                },
                Slot.startOf(series, firstDay),
                Slot.startOf(series, endDay));
        return loose;
    }

    /** The newest reading of each point of a site that has any, by the name of the point. One query, whatever the site has. */
    public List<Newest> newest(String site) {
        var byPoint = new LinkedHashMap<String, Newest>();
        jdbc.query(NEWEST, (rows, n) -> newest(rows), site)
                .forEach(newest -> newest.ifPresent(found -> byPoint.put(found.point(), found)));
        return List.copyOf(byPoint.values());
    }

    private static Optional<Newest> newest(ResultSet rows) throws SQLException {
        Series series = Series.from(new Row(rows));
        double measured = rows.getDouble("measured");
        boolean loose = !rows.wasNull();
        byte[] packed = rows.getBytes("packed");
        Optional<Sample> last = Optional.empty();
        if (loose) {
            last = Optional.of(Sample.one(Slot.at(rows.getLong("last_loose")), measured));
        } else if (packed != null) {
            last = PackedDay.read(packed).samples().stream().reduce((one, later) -> later);
        }
        return last.map(sample -> new Newest(series.point(), series.unit(), sample.at(), sample.mean()));
    }
}
