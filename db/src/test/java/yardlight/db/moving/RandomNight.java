package yardlight.db.moving;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.evidence.HeadKey;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Writing;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Setup;

/**
 * A database with something in every table that moves: the log as the gateway writes it, and in each other table rows of
 * whatever its columns can hold, line ends, nothing, and what lies beyond the first plane of Unicode among it.
 */
final class RandomNight {

    static final Instant BEGAN = Instant.parse("2026-11-25T08:13:00.123456Z");
    static final int LINES = 600;

    private static final int ROWS = 25;
    private static final int AT_ONCE = 50;
    private static final int MOST_CHARACTERS = 60;

    /** Longer than what either database keeps in the row itself. */
    private static final int LONG_DOCUMENT = 300_000;

    private static final Set<String> WRITTEN_OTHERWISE = Set.of("lane", "log_line", "log_tile");

    /** What refers to something, and what it refers to: the same in the rows of the same number. */
    private static final Set<String> SHARED = Set.of(
            "person.login",
            "device.login",
            "passkey_handle.login",
            "passkey_handle.handle",
            "passkey.handle",
            "notice.id",
            "notice_callout.notice",
            "outbox.notice",
            "attempt.notice");

    private static final List<String> PIECES = List.of(
            "tank",
            "\t",
            "\n",
            "\r\n",
            "\\",
            "\\N",
            "\\u0041",
            "\u0085",
            "\u2028",
            "\ud83d\ude02",
            "línea €",
            "\u0001",
            "'",
            "\"",
            " ",
            ";");

    private static final double[] REALS = {
        0.1, -18.4, 1e-300, Double.MAX_VALUE, Double.MIN_VALUE, Math.PI, Double.NaN, Double.NEGATIVE_INFINITY
    };

    private final DataSource source;
    private final Random random;

    RandomNight(DataSource source, long seed) {
        this.source = source;
        this.random = new Random(seed);
    }

    void write() throws SQLException {
        log(source, LINES);
        var jdbc = new JdbcTemplate(source);
        jdbc.update("update lane set last_number = 4711, last_code = 47, setup_version = 3 where id = 1");
        try (Connection connection = source.getConnection()) {
            for (String table : Tables.MOVING) {
                if (!WRITTEN_OTHERWISE.contains(table)) {
                    fill(connection, table);
                }
            }
        }
        jdbc.update(
                "insert into secret (name, content, created_at) values (?, ?, current_timestamp)",
                HeadKey.NAME,
                Base64.getEncoder().encodeToString(HeadKey.fresh()));
    }

    /** So many lines more, as the gateway writes them. */
    static void log(DataSource source, int lines) {
        long before = new JdbcTemplate(source).queryForObject("select last_line from lane", Long.class);
        try (var journal = new Journal(source)) {
            for (int written = 0; written < lines; written += AT_ONCE) {
                try (Writing writing = journal.begin()) {
                    Instant now = BEGAN.plusMillis(before + written);
                    var sheet = writing.sheet(Setup.EMPTY);
                    var entries = new ArrayList<Entry>();
                    for (int i = 0; i < Math.min(AT_ONCE, lines - written); i++) {
                        String words = PIECES.get((written + i) % PIECES.size()) + " " + (before + written + i);
                        entries.add(
                                new Entry(Entry.What.NOTICE, Map.of("site", "mesa-" + i % 7, "notice", "n"), words));
                    }
                    writing.log(now, entries);
                    writing.commit(sheet, now);
                }
            }
        }
    }

    private void fill(Connection connection, String table) throws SQLException {
        Set<String> key = key(connection, table);
        try (PreparedStatement none = connection.prepareStatement("select * from " + table + " where 1 = 0");
                ResultSet empty = none.executeQuery()) {
            ResultSetMetaData columns = empty.getMetaData();
            String marks = String.join(", ", Collections.nCopies(columns.getColumnCount(), "?"));
            try (PreparedStatement insert =
                    connection.prepareStatement("insert into " + table + " values (" + marks + ")")) {
                for (int row = 0; row < ROWS; row++) {
                    for (int i = 1; i <= columns.getColumnCount(); i++) {
                        String name = columns.getColumnName(i).toLowerCase(Locale.ROOT);
                        boolean mayBeNothing = columns.isNullable(i) == ResultSetMetaData.columnNullable;
                        if (mayBeNothing && row % 4 == i % 4) {
                            insert.setNull(i, bound(columns.getColumnType(i)));
                        } else if (SHARED.contains(table + "." + name)) {
                            insert.setString(i, "shared " + row + "\ud83d\ude02");
                        } else {
                            insert.setObject(i, value(columns, i, row, key.contains(name)));
                        }
                    }
                    insert.executeUpdate();
                }
            }
        }
    }

    private static int bound(int type) {
        return switch (type) {
            case Types.BIT -> Types.BOOLEAN;
            case Types.TIMESTAMP -> Types.TIMESTAMP_WITH_TIMEZONE;
            default -> type;
        };
    }

    private Object value(ResultSetMetaData columns, int i, int row, boolean key) throws SQLException {
        return switch (columns.getColumnType(i)) {
            case Types.VARCHAR, Types.CLOB -> text(row, columns.getPrecision(i));
            case Types.INTEGER -> key ? row : random.nextInt();
            case Types.BIGINT -> key ? row : random.nextLong();
            case Types.DOUBLE -> REALS[random.nextInt(REALS.length)];
            case Types.BIT, Types.BOOLEAN -> random.nextBoolean();
            case Types.TIMESTAMP, Types.TIMESTAMP_WITH_TIMEZONE ->
                BEGAN.plusNanos(random.nextInt() * 1000L)
                        .plusSeconds(random.nextInt())
                        .atOffset(ZoneOffset.UTC);
            case Types.DATE -> LocalDate.ofEpochDay(random.nextInt(40_000));
            case Types.BINARY, Types.VARBINARY -> bytes();
            default -> throw new IllegalArgumentException("no such column so far: " + columns.getColumnTypeName(i));
        };
    }

    private byte[] bytes() {
        var bytes = new byte[random.nextInt(MOST_CHARACTERS)];
        random.nextBytes(bytes);
        return bytes;
    }

    /** Different in each row, for it may have to be. */
    private String text(int row, int most) {
        var text = new StringBuilder().append(row).append(':');
        int length = most == Integer.MAX_VALUE ? random.nextInt(LONG_DOCUMENT) : random.nextInt(MOST_CHARACTERS);
        while (text.length() < length) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        String cut = text.substring(0, Math.min(text.length(), most));
        // A pair that was cut in its middle is none.
        return new String(cut.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }

    private static Set<String> key(Connection connection, String table) throws SQLException {
        var key = new HashSet<String>();
        boolean upper = connection.getMetaData().storesUpperCaseIdentifiers();
        try (ResultSet keys =
                connection.getMetaData().getPrimaryKeys(null, null, upper ? table.toUpperCase(Locale.ROOT) : table)) {
            while (keys.next()) {
                key.add(keys.getString("COLUMN_NAME").toLowerCase(Locale.ROOT));
            }
        }
        return key;
    }
}
