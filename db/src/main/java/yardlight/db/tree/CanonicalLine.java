package yardlight.db.tree;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.TreeMap;

/**
 * A line of the log as the bytes that are hashed: JSON in the canonical form of RFC 8785, with the members {@code about},
 * {@code at}, {@code line}, {@code what} and {@code words} of the contract. Everything in it is a text, but for the number
 * of the line.
 */
public final class CanonicalLine {

    private static final int FIRST_PRINTABLE = 0x20;
    private static final int USUAL_LENGTH = 320;

    private final StringBuilder json = new StringBuilder(USUAL_LENGTH);

    private CanonicalLine() {}

    /**
     * The bytes of one line.
     *
     * @param at is cut to the microsecond, as the databases keep it
     */
    public static byte[] of(long line, Instant at, String what, Map<String, String> about, String words) {
        return text(line, at, what, about, words).getBytes(StandardCharsets.UTF_8);
    }

    /** The same before it is UTF-8. */
    public static String text(long line, Instant at, String what, Map<String, String> about, String words) {
        var canonical = new CanonicalLine();
        canonical.json.append("{\"about\":{");
        // Members in the order of their UTF-16 code units, which is how Java compares strings.
        String comma = "";
        for (var one : new TreeMap<>(about).entrySet()) {
            canonical.json.append(comma);
            canonical.string(one.getKey());
            canonical.json.append(':');
            canonical.string(one.getValue());
            comma = ",";
        }
        canonical.json.append("},\"at\":");
        canonical.string(at.truncatedTo(ChronoUnit.MICROS).toString());
        canonical.json.append(",\"line\":").append(line).append(",\"what\":");
        canonical.string(what);
        canonical.json.append(",\"words\":");
        canonical.string(words);
        return canonical.json.append('}').toString();
    }

    private void string(String text) {
        json.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> json.append("\\\"");
                case '\\' -> json.append("\\\\");
                case '\b' -> json.append("\\b");
                case '\t' -> json.append("\\t");
                case '\n' -> json.append("\\n");
                case '\f' -> json.append("\\f");
                case '\r' -> json.append("\\r");
                default -> {
                    if (c < FIRST_PRINTABLE) {
                        json.append(String.format("\\u%04x", (int) c));
                    } else {
                        json.append(c);
                    }
                }
            }
        }
        json.append('"');
    }
}
