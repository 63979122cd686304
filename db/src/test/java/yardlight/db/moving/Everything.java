package yardlight.db.moving;

import java.sql.Timestamp;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DataSourceUtils;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/** What is in a database, read without anything that moves it: by table, each row as a text. */
final class Everything {

    /** What goes on by itself when a line is written. */
    private static final List<String> COUNTED =
            List.of("turn", "last_line", "log_size", "log_edge", "last_at", "heard_from");

    private Everything() {}

    static Map<String, List<String>> in(DataSource source) {
        var one = new SingleConnectionDataSource(DataSourceUtils.getConnection(source), true);
        var jdbc = new JdbcTemplate(one);
        var all = new TreeMap<String, List<String>>();
        for (String table : Tables.MOVING) {
            all.put(
                    table,
                    jdbc.queryForList("select * from " + table).stream()
                            .map(row -> row(table, row))
                            .filter(row -> !row.contains("what=move,"))
                            .sorted()
                            .toList());
        }
        one.destroy();
        return all;
    }

    private static String row(String table, Map<String, Object> row) {
        var columns = new TreeMap<String, String>();
        row.forEach((name, value) -> columns.put(name.toLowerCase(Locale.ROOT), value(value)));
        columns.keySet().removeIf(name -> Tables.STAYING_COLUMNS.contains(table + "." + name));
        if (table.equals(Tables.LANE)) {
            columns.keySet().removeAll(COUNTED);
        }
        return columns.toString();
    }

    private static String value(Object value) {
        if (value instanceof OffsetDateTime time) {
            return time.toInstant().toString();
        }
        if (value instanceof Timestamp time) {
            return time.toInstant().toString();
        }
        if (value instanceof java.sql.Date day) {
            return day.toLocalDate().toString();
        }
        if (value instanceof byte[] bytes) {
            return HexFormat.of().formatHex(bytes);
        }
        return value instanceof LocalDate day ? day.toString() : String.valueOf(value);
    }
}
