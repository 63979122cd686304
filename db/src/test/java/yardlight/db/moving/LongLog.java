package yardlight.db.moving;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Base64;
import java.util.Map;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.LogColumns;
import yardlight.db.evidence.HeadKey;
import yardlight.db.tree.CanonicalLine;
import yardlight.db.tree.Frontier;
import yardlight.db.tree.Hashing;
import yardlight.escalation.Entry;

/** A log of many lines, written past the journal with the same tree, and the key that signs its heads. */
public final class LongLog {

    private static final Instant BEGAN = Instant.parse("2026-11-25T08:13:00Z");
    private static final int AT_ONCE = 10_000;
    private static final String TILE = "insert into log_tile (level, place, hash) values (?, ?, ?)";
    private static final String LANE = "update lane set log_first = 1, log_size = ?, log_edge = ?, last_line = ?,"
            + " last_at = timestamp with time zone '2026-11-26 00:00:00+00' where id = 1";

    private final Hashing hashing = new Hashing();
    private final Frontier frontier = new Frontier();

    private LongLog() {}

    public static void write(DataSource source, int lines) throws SQLException {
        try (Connection connection = source.getConnection()) {
            connection.setAutoCommit(false);
            new LongLog().write(connection, lines);
            connection.setAutoCommit(true);
        }
        new JdbcTemplate(source)
                .update(
                        "insert into secret (name, content, created_at) values (?, ?, current_timestamp)",
                        HeadKey.NAME,
                        Base64.getEncoder().encodeToString(HeadKey.fresh()));
    }

    private void write(Connection connection, int last) throws SQLException {
        try (PreparedStatement lines = connection.prepareStatement(LogColumns.TABLE.insert());
                PreparedStatement tiles = connection.prepareStatement(TILE);
                PreparedStatement lane = connection.prepareStatement(LANE)) {
            for (int number = 1; number <= last; number++) {
                LogColumns.Line line = line(number);
                LogColumns.TABLE.bindInsert(lines, line);
                lines.addBatch();
                frontier.add(line.leaf(), (level, place, hash) -> tile(tiles, level, place, hash));
                if (number % AT_ONCE == 0 || number == last) {
                    lines.executeBatch();
                    tiles.executeBatch();
                    connection.commit();
                }
            }
            lane.setLong(1, last);
            lane.setBytes(2, frontier.bytes());
            lane.setLong(3, last);
            lane.executeUpdate();
            connection.commit();
        }
    }

    /** As long as a line of the demo is. */
    private LogColumns.Line line(int number) {
        var entry = new Entry(
                Entry.What.NOTICE,
                Map.of(
                        "site",
                        "mesa-" + number % 40,
                        "contact",
                        "ana",
                        "notice",
                        "mesa-" + number % 40 + ".water-tank.high." + number + ".1.ana",
                        "channel",
                        "sms-mail"),
                "handed over: sms-mail, 250 2.0.0 Ok: queued as " + Integer.toHexString(number * 31));
        Instant at = BEGAN.plusMillis(number);
        byte[] leaf = hashing.leaf(CanonicalLine.of(number, at, entry.what().word(), entry.about(), entry.words()));
        return new LogColumns.Line(number, at, entry, leaf);
    }

    private static void tile(PreparedStatement tiles, int level, long place, byte[] hash) {
        try {
            tiles.setInt(1, level);
            tiles.setLong(2, place);
            tiles.setBytes(3, hash);
            tiles.addBatch();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
