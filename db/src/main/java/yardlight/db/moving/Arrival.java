package yardlight.db.moving;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Map;
import yardlight.db.columns.Column;
import yardlight.db.columns.LogColumns;
import yardlight.db.evidence.LogHead;
import yardlight.db.tree.CanonicalLine;
import yardlight.db.tree.Frontier;
import yardlight.db.tree.Hashing;
import yardlight.escalation.Entry;

/**
 * The line of the log that says from where all of it came, written as the writer would and in the transaction that brought it:
 * so it is there when, and only when, everything else is. Nobody has heard a box since the database was left, and this line hides
 * since when: so the break ends with it.
 */
final class Arrival {

    private static final String TILE = "insert into log_tile (level, place, hash) values (?, ?, ?)";
    private static final String LANE = "update lane set turn = turn + 1, last_line = ?, log_size = ?, log_edge = ?,"
            + " last_at = ?, heard_from = ? where id = 1";

    private final Connection connection;

    Arrival(Connection connection) {
        this.connection = connection;
    }

    /**
     * @param fitted what had to be changed of it
     * @param edge of the tree of the log as it came
     * @param clock now; the line is no earlier than what was written last
     */
    Entry write(String file, Crate crate, Fitted fitted, LogHead head, byte[] edge, Instant clock) throws SQLException {
        Instant now = clock.isBefore(head.at()) ? head.at() : clock;
        Entry entry = entry(file, crate, fitted, head);
        long line = head.last() + 1;
        byte[] leaf = new Hashing()
                .leaf(CanonicalLine.of(line, now, entry.what().word(), entry.about(), LogColumns.cut(entry.words())));
        var tree = new Frontier(head.size(), edge);
        tree.add(leaf, this::tile);
        try (PreparedStatement statement = connection.prepareStatement(LogColumns.TABLE.insert())) {
            LogColumns.TABLE.bindInsert(statement, new LogColumns.Line(line, now, entry, leaf));
            statement.executeUpdate();
        }
        try (PreparedStatement statement = connection.prepareStatement(LANE)) {
            statement.setLong(1, line);
            statement.setLong(2, tree.size());
            statement.setBytes(3, tree.bytes());
            statement.setObject(4, Column.stored(now));
            statement.setObject(5, Column.stored(now));
            statement.executeUpdate();
        }
        return entry;
    }

    private static Entry entry(String file, Crate crate, Fitted fitted, LogHead head) {
        String root = HexFormat.of().formatHex(head.root());
        return new Entry(
                Entry.What.MOVE,
                Map.of("root", root),
                "moved here by " + file + ", made at " + crate.made() + " of a database of " + crate.database() + ": "
                        + crate.parts().size() + " tables, " + crate.rows() + " rows, the log to line " + head.last()
                        + ", whose tree was computed anew and has the root " + root
                        + fitted.words());
    }

    private void tile(int level, long place, byte[] hash) {
        try (PreparedStatement statement = connection.prepareStatement(TILE)) {
            statement.setInt(1, level);
            statement.setLong(2, place);
            statement.setBytes(3, hash);
            statement.executeUpdate();
        } catch (SQLException e) {
            throw new MoveRefused("the log cannot be written: " + e.getMessage(), e);
        }
    }
}
