package yardlight.demo.bench;

import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;

/** What a stopped gateway's file holds of readings. How they lie there is in docs/decisions/readings.md. */
record ReadingsHome(BenchHome home) {

    private static final Instant FIRST = Instant.parse("2020-01-01T00:00:00Z");
    private static final int DAY_BITS = 16;
    private static final int WHOLE = 30;

    /** Bytes of packed days of the one series there is: of those that are whole, and of those that are summed up. */
    record Packed(long wholeBytes, int wholeDays, long summedBytes, int summedDays) {}

    /** Bytes of the file once the space of what was overwritten is given back. */
    long compacted() throws SQLException, IOException {
        return home.contents().bytes();
    }

    /** Has the hourly work done at the next start, as after an hour in which the gateway was off. */
    void dueAtOnce() throws SQLException {
        try (Connection connection = open();
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("update qrtz_triggers set next_fire_time = next_fire_time - 3600000"
                    + " where trigger_name = 'readings'");
        }
    }

    Packed packed(Instant today) throws SQLException {
        long border = Duration.between(FIRST, today).toDays() - WHOLE;
        String sql =
                "select sum(case when of_day >= ? then bytes else 0 end), sum(case when of_day >= ? then 1 else 0 end),"
                        + " sum(case when of_day < ? then bytes else 0 end), sum(case when of_day < ? then 1 else 0 end) from"
                        + " (select bitand(slot, 65535) as of_day, octet_length(packed) as bytes from reading_day)";
        try (Connection connection = open();
                PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 1; i <= 4; i++) {
                statement.setLong(i, border);
            }
            try (ResultSet row = statement.executeQuery()) {
                row.next();
                return new Packed(row.getLong(1), row.getInt(2), row.getLong(3), row.getInt(4));
            }
        }
    }

    /** Gives the past of the first series to a series of each other point. */
    void copyToAll(int points, int boxes, int pointsOfABox) throws SQLException {
        try (Connection connection = open();
                Statement statement = connection.createStatement();
                PreparedStatement series = connection.prepareStatement(
                        "insert into reading_series select ?, ?, ?, unit, summed_to from reading_series where id = 1");
                PreparedStatement days = connection.prepareStatement(
                        "insert into reading_day select slot + ?, packed from reading_day where slot < ?")) {
            for (int point = 1; point < points; point++) {
                series.setInt(1, point + 1);
                series.setString(2, "site-" + point / pointsOfABox % boxes);
                series.setString(3, "point-" + point % pointsOfABox);
                series.execute();
                days.setLong(1, (long) point << DAY_BITS);
                days.setLong(2, 2L << DAY_BITS);
                days.execute();
            }
            statement.execute("shutdown compact");
        }
    }

    private Connection open() throws SQLException {
        return DriverManager.getConnection(home.url(), "sa", "");
    }
}
