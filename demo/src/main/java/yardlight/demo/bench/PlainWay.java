package yardlight.demo.bench;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.sql.DataSource;

/**
 * The plain way to store a new alarm: each request takes a connection, inserts the rows that a gateway has stored for one,
 * commits, syncs the file to disk and answers. It is given an easier task than the gateway: it decides nothing, reads
 * nothing, updates nothing, and takes no lock that another request could want.
 */
final class PlainWay {

    /** All that a new alarm makes before it is answered, in the order in which rows refer to each other. */
    private static final List<String> TABLES = List.of(
            "event",
            "alarm",
            "callout",
            "notice",
            "notice_callout",
            "outbox",
            "desk",
            "site_state",
            "box_watch",
            "due",
            "log_line");

    /** Numbers that no two rows share. */
    private static final Set<String> COUNTED = Set.of("NUMBER", "LINE", "LIVE_CODE", "CODE");

    private record Row(String insert, List<Boolean> counted, List<Object> values) {}

    private final DataSource source;
    private final List<Row> rows = new ArrayList<>();
    private final AtomicInteger next = new AtomicInteger(1_000);

    PlainWay(DataSource source) throws SQLException {
        this.source = source;
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            for (String table : TABLES) {
                read(table, statement);
            }
        }
    }

    private void read(String table, Statement statement) throws SQLException {
        String own = table.equals("log_line") ? " where site is not null order by line" : "";
        try (ResultSet found = statement.executeQuery("select * from " + table + own)) {
            int columns = found.getMetaData().getColumnCount();
            String marks = IntStream.range(0, columns).mapToObj(column -> "?").collect(Collectors.joining(","));
            while (found.next()) {
                List<Object> values = new ArrayList<>();
                List<Boolean> counted = new ArrayList<>();
                for (int column = 1; column <= columns; column++) {
                    values.add(found.getObject(column));
                    counted.add(COUNTED.contains(found.getMetaData().getColumnName(column)) && !table.equals("notice"));
                }
                rows.add(new Row("insert into " + table + " values (" + marks + ")", counted, values));
            }
        }
    }

    /** How many rows a new alarm is. */
    int rows() {
        return rows.size();
    }

    /** One alarm, as the plain way does it. */
    void store() throws SQLException {
        store(1);
    }

    /** So many alarms with one commit and one sync: the rows and nothing else. */
    void store(int alarms) throws SQLException {
        int first = next.getAndAdd(alarms);
        try (Connection connection = source.getConnection();
                Statement sync = connection.createStatement()) {
            connection.setAutoCommit(false);
            for (int i = 0; i < rows.size(); i++) {
                try (PreparedStatement insert =
                        connection.prepareStatement(rows.get(i).insert())) {
                    for (int number = first; number < first + alarms; number++) {
                        fill(insert, rows.get(i), number, number * rows.size() + i);
                        insert.addBatch();
                    }
                    insert.executeBatch();
                }
            }
            connection.commit();
            sync.execute("checkpoint sync");
        }
    }

    private static void fill(PreparedStatement insert, Row row, int number, int count) throws SQLException {
        for (int column = 0; column < row.values().size(); column++) {
            Object value = row.values().get(column);
            if (row.counted().get(column) && value != null) {
                insert.setObject(column + 1, count);
            } else if (value instanceof String words) {
                insert.setString(column + 1, words.replaceAll("(site|contact|box)-0\\b", "$1-" + number));
            } else {
                insert.setObject(column + 1, value);
            }
        }
    }
}
