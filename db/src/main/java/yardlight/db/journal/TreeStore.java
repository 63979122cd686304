package yardlight.db.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.columns.LogColumns;
import yardlight.db.tree.CanonicalLine;
import yardlight.db.tree.Hashing;

/** Makes each line of the log a leaf of the tree, in the transaction that writes it. */
final class TreeStore {

    private static final Logger LOG = LoggerFactory.getLogger(TreeStore.class);

    private static final int PAGE = 1000;
    private static final String TILE = "insert into log_tile (level, place, hash) values (?, ?, ?)";
    /** Where the lines begin that have no gap between them. */
    private static final String FIRST = "select max(line) as line from log_line l where not exists"
            + " (select 1 from log_line p where p.line = l.line - 1)";

    private static final String OLD = "select line, logged_at, what, about, words from log_line where line >= ?"
            + " order by line fetch first " + PAGE + " rows only";
    private static final String LEAF = "update log_line set leaf = ? where line = ?";

    private record Tile(int level, long place, byte[] hash) {}

    private record Leaf(long line, byte[] hash) {}

    private final Pen pen;
    private final Numbers numbers;
    private final Hashing hashing = new Hashing();
    private final List<Tile> tiles = new ArrayList<>();

    TreeStore(Pen pen, Numbers numbers) {
        this.pen = pen;
        this.numbers = numbers;
    }

    /** The lines as they are kept, each with its hash; what the tree needs besides is written. */
    List<LogColumns.Line> add(List<Extras.Written> lines) {
        if (lines.isEmpty()) {
            return List.of();
        }
        if (numbers.firstLeaf() == 0) {
            begin(lines.get(0).line());
        }
        List<LogColumns.Line> kept = lines.stream().map(this::line).toList();
        pen.write(TILE, tiles, (statement, tile) -> {
            statement.setInt(1, tile.level());
            statement.setLong(2, tile.place());
            statement.setBytes(3, tile.hash());
        });
        return kept;
    }

    private LogColumns.Line line(Extras.Written written) {
        byte[] leaf = leaf(
                written.line(),
                written.at(),
                written.entry().what().word(),
                written.entry().about(),
                LogColumns.cut(written.entry().words()));
        return new LogColumns.Line(written.line(), written.at(), written.entry(), leaf);
    }

    private byte[] leaf(long line, Instant at, String what, Map<String, String> about, String words) {
        byte[] leaf = hashing.leaf(CanonicalLine.of(line, at, what, about, words));
        numbers.tree().add(leaf, (level, place, hash) -> tiles.add(new Tile(level, place, hash)));
        return leaf;
    }

    /** A log that is older than its tree gets it now, once: from the line on behind which none is missing. */
    private void begin(long next) {
        long first = numbers.lastLine() == 0 ? next : oldest(next);
        numbers.beginTreeAt(first);
        long line = first;
        while (line < next) {
            List<Leaf> page = page(line);
            pen.write(LEAF, page, (statement, leaf) -> {
                statement.setBytes(1, leaf.hash());
                statement.setLong(2, leaf.line());
            });
            line += page.size();
        }
        if (next > first) {
            LOG.info("the log has a tree now: lines {} to {} were added to it", first, next - 1);
        }
    }

    private long oldest(long next) {
        long oldest =
                pen.read(FIRST, (statement, none) -> {}, row -> row.big("line")).get(0);
        return oldest == 0 ? next : oldest;
    }

    private List<Leaf> page(long from) {
        return pen.read(
                OLD,
                (statement, none) -> statement.setLong(1, from),
                row -> new Leaf(
                        row.big("line"),
                        leaf(
                                row.big("line"),
                                row.time("logged_at"),
                                row.text("what"),
                                LogColumns.about(row.text("about")),
                                row.text("words"))));
    }
}
