package yardlight.db.moving;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.Arrays;
import yardlight.db.columns.LogColumns;
import yardlight.db.columns.Row;
import yardlight.db.evidence.LogHead;
import yardlight.db.tree.CanonicalLine;
import yardlight.db.tree.Frontier;
import yardlight.db.tree.Hashing;

/**
 * Computes the tree of the log anew, from every line that is kept: each as the bytes that are hashed, its hash, the hash of
 * each tile, and the root. What is stored of them is only compared. Of lines that were let go after their time there are the
 * hashes of their tiles, and nothing else to go by.
 */
final class StoredLog {

    /** What the writer goes on from. */
    private record End(long lastLine, long first, long size, byte[] edge, Instant at) {}

    private static final String END = "select last_line, log_first, log_size, log_edge, last_at from lane where id = 1";
    private static final String OLDEST = "select min(line) from log_line";
    private static final String LINES = "select line, logged_at, what, about, words, leaf from log_line where line >= ?"
            + " order by line fetch first 1000 rows only";

    private final Connection connection;
    private final Hashing hashing = new Hashing();
    private final StoredTiles tiles;

    /** The tiles that are complete, and the lines after them. */
    private final Frontier above = new Frontier();

    private Frontier below = new Frontier();

    StoredLog(Connection connection) {
        this.connection = connection;
        this.tiles = new StoredTiles(connection);
    }

    /**
     * The head of the lines that are there.
     *
     * @throws MoveRefused when they are not those that were written, naming the first line or tile that is not
     */
    LogHead head() throws SQLException {
        End end = end();
        if (end.size() == 0 || end.first() + end.size() - 1 != end.lastLine()) {
            throw new MoveRefused(
                    "the log has lines that are not in its tree; a gateway of this release has to be started"
                            + " on it, so that they are");
        }
        long line = cut(end);
        long next = page(line, end);
        while (next > line) {
            line = next;
            next = page(line, end);
        }
        if (line != end.lastLine() + 1) {
            throw new MoveRefused(
                    "line " + line + " of the log is missing, and " + end.lastLine() + " should be the last");
        }
        if (!Arrays.equals(edge(), end.edge())) {
            throw new MoveRefused("the tree of the log is not the one that the writer had");
        }
        tiles.refuseMore(end.size());
        return new LogHead(end.first(), end.size(), new Frontier(end.size(), edge()).root(), end.at());
    }

    /** The right edge of the tree, after {@link #head}. */
    byte[] edge() {
        byte[] left = above.bytes();
        byte[] right = below.bytes();
        byte[] edge = Arrays.copyOf(left, left.length + right.length);
        System.arraycopy(right, 0, edge, left.length, right.length);
        return edge;
    }

    private End end() throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(END)) {
            rows.next();
            var row = new Row(rows);
            return new End(
                    row.big("last_line"),
                    row.big("log_first"),
                    row.big("log_size"),
                    row.bytes("log_edge"),
                    row.maybeTime("last_at").orElse(Instant.EPOCH));
        }
    }

    /** Takes the hashes of what is not kept any more; comes back with the first line that is to be there. */
    private long cut(End end) throws SQLException {
        long oldest = oldest(end.lastLine() + 1);
        long line = end.first();
        for (long place = 0; line + Frontier.TILE <= oldest; place++) {
            above.add(tiles.at(place), tiles::compareAbove);
            line += Frontier.TILE;
        }
        return line;
    }

    private long oldest(long otherwise) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(OLDEST)) {
            rows.next();
            long oldest = rows.getLong(1);
            return rows.wasNull() ? otherwise : oldest;
        }
    }

    /** Comes back with the line after the last one that was read. */
    private long page(long from, End end) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(LINES)) {
            statement.setLong(1, from);
            long line = from;
            try (ResultSet rows = statement.executeQuery()) {
                var row = new Row(rows);
                for (; rows.next() && line <= end.lastLine(); line++) {
                    if (row.big("line") != line) {
                        throw new MoveRefused("line " + line + " of the log is missing");
                    }
                    add(leaf(row, line));
                }
            }
            return line;
        }
    }

    private byte[] leaf(Row row, long line) throws SQLException {
        byte[] leaf = hashing.leaf(CanonicalLine.of(
                line, row.time("logged_at"), row.text("what"), LogColumns.about(row.text("about")), row.text("words")));
        if (!Arrays.equals(leaf, row.bytes("leaf"))) {
            throw new MoveRefused("line " + line + " of the log is not what it was when it was written");
        }
        return leaf;
    }

    private void add(byte[] leaf) throws SQLException {
        below.add(leaf, (level, place, hash) -> {});
        if (below.size() == Frontier.TILE) {
            tiles.compare(1, above.size(), below.root());
            above.add(below.root(), tiles::compareAbove);
            below = new Frontier();
        }
    }
}
