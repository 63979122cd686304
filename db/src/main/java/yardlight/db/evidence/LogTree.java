package yardlight.db.evidence;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.LogColumns;
import yardlight.db.columns.Row;
import yardlight.db.tree.CanonicalLine;
import yardlight.db.tree.Frontier;
import yardlight.db.tree.Tree;

/** Reads the tree of the log. A line that is in it never changes, so what is read beside the writer fits together. */
@Repository
public class LogTree {

    /**
     * A line with its proof.
     *
     * @param entry the line in the canonical form that is hashed
     * @param leaf its hash
     * @param index of the leaf, from 0 on
     * @param path the hashes of RFC 6962, 2.1.1, the nearest first
     */
    public record Proof(String entry, byte[] leaf, long index, long size, byte[] root, List<byte[]> path) {
        public Proof {
            path = List.copyOf(path);
        }
    }

    private static final String HEAD = "select last_at, log_first, log_size, log_edge from lane where id = 1";
    private static final String LEAVES = "select line, leaf from log_line where line >= ? and line < ?";
    private static final String TILES = "select place, hash from log_tile where level = ? and place >= ? and place < ?";
    private static final String LINE =
            "select line, logged_at, what, about, words, leaf from log_line where line = ? and leaf is not null";

    private final JdbcTemplate jdbc;

    LogTree(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** The newest head; of a log without lines that of an empty tree. */
    public LogHead head() {
        return jdbc.queryForObject(HEAD, (rows, number) -> head(new Row(rows)));
    }

    /**
     * Shows that a line is in the log that had so many lines in the tree.
     *
     * @param size at most that of {@link #head}
     * @return empty when there is no such line in it, or none any more
     */
    public Optional<Proof> proof(long line, LogHead head, long size) {
        long leaf = line - head.first();
        if (leaf < 0 || leaf >= size) {
            return Optional.empty();
        }
        Tree tree = tree(head);
        return jdbc.query(LINE, LogTree::entry, line).stream()
                .findFirst()
                .flatMap(found -> tree.inclusion(leaf, size)
                        .flatMap(path -> tree.root(size)
                                .map(root -> new Proof(found.text(), found.leaf(), leaf, size, root, path))));
    }

    /**
     * Shows that the log of {@code first} lines is the beginning of the one of {@code second}.
     *
     * @return empty when it needs lines that are not kept any more
     */
    public Optional<List<byte[]>> consistency(LogHead head, long first, long second) {
        return tree(head).consistency(first, second);
    }

    /** The root of the tree when it had so many lines; empty when it needs lines that are not kept any more. */
    public Optional<byte[]> root(LogHead head, long size) {
        return tree(head).root(size);
    }

    private Tree tree(LogHead head) {
        return new Tree((level, place) -> under(head, level, place));
    }

    private Map<Long, byte[]> under(LogHead head, int level, long place) {
        long from = place * Frontier.TILE;
        long to = Math.min(from + Frontier.TILE, level == 0 ? head.size() : Long.MAX_VALUE);
        var found = new HashMap<Long, byte[]>();
        if (level == 0) {
            jdbc.query(
                    LEAVES,
                    rows -> {
                        Optional.ofNullable(rows.getBytes("leaf"))
                                .ifPresent(leaf -> found.put(line(rows) - head.first(), leaf));
                    },
                    head.first() + from,
                    head.first() + to);
        } else {
            jdbc.query(
                    TILES,
                    rows -> {
                        found.put(rows.getLong("place"), rows.getBytes("hash"));
                    },
                    level,
                    from,
                    to);
        }
        return found;
    }

    private static long line(ResultSet rows) {
        try {
            return rows.getLong("line");
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private record Found(String text, byte[] leaf) {}

    private static Found entry(ResultSet rows, int number) throws SQLException {
        var row = new Row(rows);
        String text = CanonicalLine.text(
                row.big("line"),
                row.time("logged_at"),
                row.text("what"),
                LogColumns.about(row.text("about")),
                row.text("words"));
        return new Found(text, row.bytes("leaf"));
    }

    private static LogHead head(Row row) throws SQLException {
        long size = row.big("log_size");
        return new LogHead(
                Math.max(1, row.big("log_first")),
                size,
                new Frontier(size, row.bytes("log_edge")).root(),
                row.maybeTime("last_at").orElse(Instant.EPOCH));
    }
}
