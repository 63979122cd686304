package yardlight.db.columns;

import static yardlight.db.columns.Column.big;
import static yardlight.db.columns.Column.bytes;
import static yardlight.db.columns.Column.maybe;
import static yardlight.db.columns.Column.text;
import static yardlight.db.columns.Column.time;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardlight.escalation.Entry;

/** Log lines. */
public final class LogColumns {

    /**
     * An entry with its number and time.
     *
     * @param leaf its hash in the tree of all lines
     */
    public record Line(long line, Instant at, Entry entry, byte[] leaf) {}

    private static final int LONGEST = 4000;

    public static final Table<Line> TABLE = Table.of(
            "log_line",
            List.of(
                    big("line", Line::line),
                    time("logged_at", Line::at),
                    text("what", row -> row.entry().what().word()),
                    maybe("site", row -> Optional.ofNullable(row.entry().about().get("site"))),
                    maybe(
                            "contact",
                            row -> Optional.ofNullable(row.entry().about().get("contact"))),
                    text("about", row -> about(row.entry().about())),
                    text("words", row -> cut(row.entry().words())),
                    bytes("leaf", Line::leaf)));

    private LogColumns() {}

    private static String about(Map<String, String> about) {
        return Compact.join(about.entrySet(), one -> one.getKey() + " " + one.getValue());
    }

    /** What a line is about, from its column. */
    public static Map<String, String> about(String column) {
        var about = new TreeMap<String, String>();
        Compact.split(column, one -> one.split(" ", 2)).forEach(parts -> about.put(parts[0], parts[1]));
        return about;
    }

    /** The words of an entry as they are kept. */
    public static String cut(String words) {
        return words.length() <= LONGEST ? words : words.substring(0, LONGEST);
    }
}
