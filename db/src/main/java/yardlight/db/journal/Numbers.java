package yardlight.db.journal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.db.columns.Column;

/** The one row of table {@code lane}: the numbers that are drawn one after the other. Reading it locks it. */
final class Numbers {

    private static final String LOCK =
            "select turn, last_line, last_number, last_code, setup_version, last_at from lane where id = 1 for update";
    private static final String WRITE =
            "update lane set turn = ?, last_line = ?, last_number = ?, last_code = ?, setup_version = ?, last_at = ?"
                    + " where id = 1";

    private record Values(long turn, long line, long number, int code, int version, Optional<Instant> at) {}

    private final Pen pen;
    private final Values before;
    private long line;
    private long number;
    private int version;

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
                                row.maybeTime("last_at")))
                .get(0);
        line = before.line();
        number = before.number();
        version = before.version();
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

    /** Which transaction this is: the last one that was stored has the number before it. */
    long turn() {
        return before.turn() + 1;
    }

    /** @param lastCode the answer code up to 999 that was given out last */
    void write(Instant now, int lastCode) {
        var after = new Values(turn(), line, number, lastCode, version, Optional.of(now));
        pen.write(WRITE, List.of(after), (statement, row) -> {
            statement.setLong(1, row.turn());
            statement.setLong(2, row.line());
            statement.setLong(3, row.number());
            statement.setInt(4, row.code());
            statement.setInt(5, row.version());
            statement.setObject(6, Column.stored(now));
        });
    }
}
