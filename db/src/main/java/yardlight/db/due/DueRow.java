package yardlight.db.due;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Locale;
import yardlight.db.columns.Row;

/** Reads rows of table {@code due}. */
final class DueRow {

    private DueRow() {}

    static Due read(ResultSet rows, int number) throws SQLException {
        var row = new Row(rows);
        var kind = DueKey.Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT).replace('-', '_'));
        return new Due(new DueKey(kind, row.text("subject")), row.time("due_at"));
    }

    static Instant time(ResultSet rows, int number) throws SQLException {
        return new Row(rows).time("ready_at");
    }
}
