package yardlight.db.outbox;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import yardlight.db.columns.Column;
import yardlight.db.columns.NoticeColumns;
import yardlight.db.columns.Row;

/** Reads outbox rows together with their notices. */
final class OutboxRow {

    /** All that {@link #read} needs, from {@code outbox o} and {@code notice n}. */
    static final String COLUMNS = NoticeColumns.TABLE.columns().stream()
                    .map(Column::name)
                    .map(name -> "n." + name)
                    .collect(Collectors.joining(", "))
            + ", o.channel as out_by, o.queued_at as out_since, o.deferrals, o.doubts";

    private OutboxRow() {}

    static Outgoing read(ResultSet rows, int number) throws SQLException {
        var row = new Row(rows);
        return new Outgoing(
                NoticeColumns.read(row).notice(),
                row.text("out_by"),
                row.time("out_since"),
                row.number("deferrals"),
                row.number("doubts"));
    }

    static Instant time(ResultSet rows, int number) throws SQLException {
        return new Row(rows).time("ready_at");
    }

    /** {@code ?, ?, ?} for a list of that many, and never empty. */
    static String marks(List<?> values) {
        return values.stream().map(any -> "?").collect(Collectors.joining(", "));
    }
}
