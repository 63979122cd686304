package yardlight.db.evidence;

import java.io.IOException;
import java.io.Writer;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.LogColumns;
import yardlight.db.columns.Row;
import yardlight.db.tree.CanonicalLine;
import yardlight.db.tree.Frontier;

/**
 * The whole log as a file that can be checked by itself. Its lines, each ended by a line feed:
 *
 * <pre>
 * yardlight log 1
 * head {"at":…,"first":1,"publicKey":…,"root":…,"signature":…,"size":600}
 * cut 1 256 &lt;hash of lines 1 to 256, which are not kept any more&gt;
 * 257 &lt;hash of the line&gt; {"about":…,"at":…,"line":257,"what":…,"words":…}
 * …
 * sum 257 512 &lt;hash of lines 257 to 512&gt;
 * …
 * end 600
 * </pre>
 *
 * <p>A line is hashed as it stands there after its hash. The sums would not be needed; they tell where to look when
 * something does not fit.
 */
@Repository
public class LogExport {

    private static final int PAGE = 1000;
    private static final String LINES = "select line, logged_at, what, about, words, leaf from log_line where line >= ?"
            + " and line <= ? order by line fetch first " + PAGE + " rows only";
    private static final String TILES = "select place, hash from log_tile where level = 1 and place >= ? order by place"
            + " fetch first " + PAGE + " rows only";
    private static final String OLDEST = "select min(line) from log_line where line >= ?";

    private record Exported(long line, String leaf, String text) {}

    private final JdbcTemplate jdbc;

    LogExport(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Writes every line up to a head, a page at a time, so that a long log needs little memory.
     *
     * @throws IOException when the writer does not take it; then the file lacks its end
     */
    public void write(LogHead head, SignedHead signed, Writer to) throws IOException {
        var sums = new Sums(head);
        to.write("yardlight log 1\nhead " + signed.json() + "\n");
        long line = cut(head, sums, to);
        List<Exported> page = page(line, head);
        while (!page.isEmpty()) {
            for (Exported one : page) {
                to.write(one.line() + " " + one.leaf() + " " + one.text() + "\n");
                Optional<String> sum = sums.endingAt(one.line());
                if (sum.isPresent()) {
                    to.write("sum " + (one.line() - Frontier.TILE + 1) + " " + one.line() + " " + sum.get() + "\n");
                }
            }
            line = page.get(page.size() - 1).line() + 1;
            page = page(line, head);
        }
        to.write("end " + head.last() + "\n");
    }

    /** The ranges that are not kept any more; comes back with the first line that is. */
    private long cut(LogHead head, Sums sums, Writer to) throws IOException {
        Long oldest = jdbc.queryForObject(OLDEST, Long.class, head.first());
        long kept = oldest == null ? head.last() + 1 : oldest;
        for (long line = head.first(); line < kept; line += Frontier.TILE) {
            long last = line + Frontier.TILE - 1;
            Optional<String> sum = sums.endingAt(last);
            if (sum.isEmpty()) {
                return line;
            }
            to.write("cut " + line + " " + last + " " + sum.get() + "\n");
        }
        return kept;
    }

    private List<Exported> page(long from, LogHead head) {
        return jdbc.query(LINES, LogExport::exported, from, head.last());
    }

    private static Exported exported(ResultSet rows, int number) throws SQLException {
        var row = new Row(rows);
        return new Exported(
                row.big("line"),
                HexFormat.of().formatHex(row.bytes("leaf")),
                CanonicalLine.text(
                        row.big("line"),
                        row.time("logged_at"),
                        row.text("what"),
                        LogColumns.about(row.text("about")),
                        row.text("words")));
    }

    /** The hashes of 256 lines each, read a page at a time. */
    private final class Sums {

        private final LogHead head;
        private Map<Long, String> page = Map.of();

        Sums(LogHead head) {
            this.head = head;
        }

        Optional<String> endingAt(long line) {
            long leaves = line - head.first() + 1;
            if (leaves % Frontier.TILE != 0 || line > head.last()) {
                return Optional.empty();
            }
            long place = leaves / Frontier.TILE - 1;
            if (!page.containsKey(place)) {
                page = read(place);
            }
            return Optional.ofNullable(page.get(place));
        }

        private Map<Long, String> read(long from) {
            var read = new TreeMap<Long, String>();
            jdbc.query(
                    TILES,
                    rows -> {
                        read.put(rows.getLong("place"), HexFormat.of().formatHex(rows.getBytes("hash")));
                    },
                    from);
            return read;
        }
    }
}
