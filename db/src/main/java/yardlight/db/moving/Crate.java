package yardlight.db.moving;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.db.disk.Vendor;
import yardlight.db.evidence.SignedHead;

/**
 * Everything that a gateway keeps, as one file: a zip with a text for each table, and one that says what is in it. That one,
 * each line ended by a line feed:
 *
 * <pre>
 * yardlight crate 1
 * schema 26
 * made 2026-11-25T08:13:00Z of H2
 * head {"at":…,"first":1,"publicKey":…,"root":…,"signature":…,"size":600}
 * part lane 1 &lt;SHA-256 of the part, unpacked&gt;
 * …
 * end &lt;SHA-256 of what stands above&gt;
 * </pre>
 *
 * @param schema version of the tables that both databases have
 * @param made by the clock of the gateway that made it
 * @param database that it was made of
 * @param head of the log in it, signed by the key in it
 */
public record Crate(int schema, Instant made, Vendor database, SignedHead head, List<Part> parts) {

    /** One table. */
    public record Part(String table, long rows, String sha256) {

        private static final String ENDING = ".txt";

        String entry() {
            return entry(table);
        }

        static String entry(String table) {
            return table + ENDING;
        }
    }

    static final String ENTRY = "crate.txt";
    private static final String FIRST = "yardlight crate 1\n";
    private static final Pattern TEXT = Pattern.compile("schema (\\d{1,9})\nmade (\\S+) of (H2|POSTGRESQL)\n"
            + "head (\\S+)\n((?:part \\w+ \\d{1,18} [0-9a-f]{64}\n)+)end ([0-9a-f]{64})\n");
    private static final Pattern PART = Pattern.compile("part (\\w+) (\\d+) ([0-9a-f]+)\n");
    private static final String END = "end ";

    public Crate {
        parts = List.copyOf(parts);
    }

    /** All rows of all tables. */
    public long rows() {
        return parts.stream().mapToLong(Part::rows).sum();
    }

    String text() {
        var text = new StringBuilder(FIRST)
                .append("schema " + schema + "\nmade " + made + " of " + database + "\nhead " + head.json() + "\n");
        parts.forEach(part -> text.append("part " + part.table() + " " + part.rows() + " " + part.sha256() + "\n"));
        return text + END + Hash.of(text.toString()) + "\n";
    }

    /** @throws MoveRefused when this is no such text, or was changed */
    static Crate read(String text) {
        if (!text.startsWith(FIRST)) {
            throw new MoveRefused("it is no crate of Yardlight, or one of a form that this release does not know");
        }
        Matcher matcher = TEXT.matcher(text).region(FIRST.length(), text.length());
        if (!matcher.matches()
                || !Hash.of(text.substring(0, text.lastIndexOf(END))).equals(matcher.group(6))) {
            throw new MoveRefused("it is damaged: what it says of itself was changed");
        }
        var parts = new ArrayList<Part>();
        PART.matcher(matcher.group(5))
                .results()
                .forEach(part -> parts.add(new Part(part.group(1), Long.parseLong(part.group(2)), part.group(3))));
        return new Crate(
                Integer.parseInt(matcher.group(1)),
                Instant.parse(matcher.group(2)),
                Vendor.valueOf(matcher.group(3)),
                SignedHead.read(matcher.group(4))
                        .orElseThrow(() -> new MoveRefused("it is damaged: its head cannot be read")),
                parts);
    }
}
