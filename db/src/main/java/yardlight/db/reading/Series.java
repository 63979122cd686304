package yardlight.db.reading;

import java.sql.SQLException;
import java.util.Optional;
import yardlight.db.columns.Row;

/**
 * The readings of one point in one unit. A point whose unit changes to one that the old cannot be converted into gets another
 * series; the newest one, with the highest id, counts.
 *
 * @param unit in which the values are stored; empty as long as nobody said
 * @param summedTo the day, counted from the first of 2020, before which readings are summed up in steps
 */
public record Series(int id, String site, String point, Optional<String> unit, int summedTo) {

    /** A select of all columns, as far as the table's name. */
    public static final String SELECT = "select id, site, point, unit, summed_to from reading_series";

    /** Reads the row that a result set of {@link #SELECT} stands on. */
    public static Series from(Row row) throws SQLException {
        return new Series(
                row.number("id"), row.text("site"), row.text("point"), row.maybe("unit"), row.number("summed_to"));
    }

    /** The same with a unit. */
    public Series in(Optional<String> other) {
        return new Series(id, site, point, other, summedTo);
    }
}
