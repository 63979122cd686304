package yardlight.db.journal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.db.columns.Column;
import yardlight.db.tree.Frontier;

/**
 * The one row of table {@code lane}: the numbers that are drawn one after the other, and the edge of the log's tree. Reading
 * it locks it.
 */
final class Numbers {

    private static final String LOCK =
            "select turn, last_line, last_number, last_code, setup_version, last_at, log_first, log_size, log_edge,"
                    + " heard_from from lane where id = 1 for update";
    private static final String WRITE =
            "update lane set turn = ?, last_line = ?, last_number = ?, last_code = ?, setup_version = ?, last_at = ?,"
                    + " log_first = ?, log_size = ?, log_edge = ?, heard_from = ? where id = 1";

    private record Values(
            long turn,
            long line,
            long number,
            int code,
            int version,
            Optional<Instant> at,
            long firstLeaf,
            long leaves,
            byte[] edge,
            Optional<Instant> heardFrom) {}

    private final Pen pen;
    private final Values before;
    private long line;
    private long number;
    private int version;
    private long firstLeaf;
    private Optional<Instant> heardFrom;
    private final Frontier tree;

    Numbers(Pen pen) {
        this.pen = pen;
        this.before = pen.read(
                        LOCK,
                        (statement, none) -> {},
                        row -> new Values(
                                row.big("turn"),
                                row.big("last_line"),
                                row.big("last_number"),
                                row.number("last_code"),
                                row.number("setup_version"),
                                row.maybeTime("last_at"),
                                row.big("log_first"),
                                row.big("log_size"),
                                row.bytes("log_edge"),
                                row.maybeTime("heard_from")))
                .get(0);
        line = before.line();
        number = before.number();
        version = before.version();
        firstLeaf = before.firstLeaf();
        heardFrom = before.heardFrom();
        tree = new Frontier(before.leaves(), before.edge());
    }

    /** The tree of the log's lines. */
    Frontier tree() {
        return tree;
    }

    /** The line that was the last before this transaction. */
    long lastLine() {
        return before.line();
    }

    /** The line that is the first leaf of the tree; 0 while there is none. */
    long firstLeaf() {
        return firstLeaf;
    }

    void beginTreeAt(long line) {
        firstLeaf = line;
    }

    long nextLine() {
        return ++line;
    }

    long nextNumber() {
        return ++number;
    }

    int version() {
        return version;
    }

    int nextVersion() {
        return ++version;
    }

    /** The answer code up to 999 that was given out last. */
    int lastCode() {
        return before.code();
    }

    /** The time of the last transaction that wrote here. */
    Optional<Instant> lastAt() {
        return before.at();
    }

    /** The end of the last break in which nobody could store anything; empty when none is known. */
    Optional<Instant> heardFrom() {
        return heardFrom;
    }

    void heardFrom(Instant end) {
        heardFrom = Optional.of(end);
    }

    /** Which transaction this is: the last one that was stored has the number before it. */
    long turn() {
        return before.turn() + 1;
    }

    /** @param lastCode the answer code up to 999 that was given out last */
    void write(Instant now, int lastCode) {
        var after = new Values(
                turn(),
                line,
                number,
                lastCode,
                version,
                Optional.of(now),
                firstLeaf,
                tree.size(),
                tree.bytes(),
                heardFrom);
        pen.write(WRITE, List.of(after), (statement, row) -> {
            statement.setLong(1, row.turn());
            statement.setLong(2, row.line());
            statement.setLong(3, row.number());
            statement.setInt(4, row.code());
            statement.setInt(5, row.version());
            statement.setObject(6, Column.stored(now));
            statement.setLong(7, row.firstLeaf());
            statement.setLong(8, row.leaves());
            statement.setBytes(9, row.edge());
            statement.setObject(10, row.heardFrom().map(Column::stored).orElse(null));
        });
    }
}
