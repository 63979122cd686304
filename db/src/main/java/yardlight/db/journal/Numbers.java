package yardlight.db.journal;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.db.columns.Column;

/** The one row of table {@code lane}: the numbers that are drawn one after the other. Reading it locks it. */
final class Numbers {

    private static final String LOCK =
            "select last_line, last_number, last_code, setup_version, last_at from lane where id = 1 for update";
    private static final String WRITE =
            "update lane set last_line = ?, last_number = ?, last_code = ?, setup_version = ?, last_at = ? where id = 1";
    private static final String TAKEN = "select code from callout where live_site > ''";
    private static final int FIRST_CODE = 10;
    private static final int LAST_CODE = 999;

    private record Values(long line, long number, int code, int version, Optional<Instant> at) {}

    private final Pen pen;
    private final Values before;
    private long line;
    private long number;
    private int code;
    private int version;
    private Set<Integer> taken;

    Numbers(Pen pen) {
        this.pen = pen;
        this.before = pen.read(
                        LOCK,
                        (statement, none) -> {},
                        row -> new Values(
                                row.big("last_line"),
                                row.big("last_number"),
                                row.number("last_code"),
                                row.number("setup_version"),
                                row.maybeTime("last_at")))
                .get(0);
        line = before.line();
        number = before.number();
        code = before.code();
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

    /** Goes round from 10 to 999 and leaves out what a live callout has; beyond that only when all of them are taken. */
    int nextCode() {
        if (taken == null) {
            taken = new HashSet<>(pen.read(TAKEN, (statement, none) -> {}, row -> row.number("code")));
        }
        int next = code;
        int tries = 0;
        do {
            next = next >= LAST_CODE ? FIRST_CODE : next + 1;
        } while (taken.contains(next) && tries++ <= LAST_CODE);
        if (taken.contains(next)) {
            next = taken.stream().mapToInt(Integer::intValue).max().orElseThrow() + 1;
        } else {
            code = next;
        }
        taken.add(next);
        return next;
    }

    /** The time of the last transaction that wrote here. */
    Optional<Instant> lastAt() {
        return before.at();
    }

    /** Writes what was drawn; nothing when nothing was. */
    void write(Instant now) {
        var after = new Values(line, number, code, version, before.at());
        if (!after.equals(before)) {
            pen.write(WRITE, List.of(after), (statement, row) -> {
                statement.setLong(1, row.line());
                statement.setLong(2, row.number());
                statement.setInt(3, row.code());
                statement.setInt(4, row.version());
                statement.setObject(5, Column.stored(now));
            });
        }
    }
}
