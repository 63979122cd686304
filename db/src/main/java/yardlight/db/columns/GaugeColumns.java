package yardlight.db.columns;

import static yardlight.db.columns.Column.flag;
import static yardlight.db.columns.Column.maybe;
import static yardlight.db.columns.Column.maybeTime;
import static yardlight.db.columns.Column.real;
import static yardlight.db.columns.Column.text;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.limit.Series;
import yardlight.escalation.reading.Reading;

/**
 * What is remembered of points that are read. Samples are text in one column: the second of the first and its value, then of
 * each the seconds since the one before and its value.
 */
public final class GaugeColumns {

    public static final Table<Gauge> TABLE = Table.of(
            "gauge",
            List.of(
                    text("id", gauge -> id(gauge.key())),
                    maybe("box", Gauge::box),
                    maybeTime("read_at", Gauge::readAt),
                    maybeTime("newest_at", gauge -> gauge.newest().map(Reading::at)),
                    real("newest", gauge -> gauge.newest().map(Reading::value).orElse(null)),
                    maybeTime("heard_at", Gauge::heardAt),
                    maybeTime("deadline", Gauge::deadline),
                    flag("excused", Gauge::excused),
                    text("holding", gauge -> Compact.join(gauge.holding(), Function.identity())),
                    text(
                            "notes",
                            gauge -> Compact.join(
                                    gauge.notes().entrySet(), note -> note.getKey() + " " + numbers(note.getValue()))),
                    text("recent", gauge -> recent(gauge.recent()))));

    private GaugeColumns() {}

    /** A point as one name, {@code mesa-9/water-tank}. */
    public static String id(Gauge.Key key) {
        return key.site() + "/" + key.point();
    }

    /** The point that {@link #id} names. */
    public static Gauge.Key key(String id) {
        int end = id.indexOf('/');
        return new Gauge.Key(id.substring(0, end), id.substring(end + 1));
    }

    public static Gauge read(Row row) throws SQLException {
        Gauge.Key key = key(row.text("id"));
        Optional<Instant> at = row.maybeTime("newest_at");
        Optional<Reading> newest = at.isEmpty()
                ? Optional.empty()
                : Optional.of(new Reading(
                        key.site(), key.point(), row.maybeReal("newest").orElseThrow(), at.get()));
        return new Gauge(
                key,
                row.maybe("box"),
                row.maybeTime("read_at"),
                newest,
                row.maybeTime("heard_at"),
                row.maybeTime("deadline"),
                row.flag("excused"),
                new TreeSet<>(Compact.split(row.text("holding"), Function.identity())),
                notes(row.text("notes")),
                recent(row.text("recent")));
    }

    private static TreeMap<String, List<Double>> notes(String column) {
        var notes = new TreeMap<String, List<Double>>();
        for (String note : Compact.split(column, Function.identity())) {
            String[] parts = note.split(" ");
            notes.put(parts[0], Stream.of(parts).skip(1).map(Double::valueOf).toList());
        }
        return notes;
    }

    private static String numbers(List<Double> numbers) {
        var text = new StringJoiner(" ");
        numbers.forEach(number -> text.add(written(number)));
        return text.toString();
    }

    private static String recent(Series series) {
        long[] seconds = series.seconds();
        double[] values = series.values();
        var text = new StringJoiner(" ");
        for (int i = 0; i < seconds.length; i++) {
            text.add(Long.toString(i == 0 ? seconds[0] : seconds[i] - seconds[i - 1]));
            text.add(written(values[i]));
        }
        return text.toString();
    }

    private static Series recent(String column) {
        var numbers = new ArrayList<Double>();
        if (!column.isEmpty()) {
            String[] parts = column.split(" ");
            double second = 0;
            for (int i = 0; i < parts.length; i += 2) {
                second += Long.parseLong(parts[i]);
                numbers.add(second);
                numbers.add(Double.valueOf(parts[i + 1]));
            }
        }
        return Series.of(numbers);
    }

    /** As short as it can be without being another number. */
    private static String written(double number) {
        String text = Double.toString(number);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
