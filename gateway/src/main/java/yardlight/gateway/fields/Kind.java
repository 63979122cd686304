package yardlight.gateway.fields;

import java.util.Locale;

/** How a field of the setup is written in a form. */
public enum Kind {
    TEXT,
    NUMBER,
    /** A length of time: a count and what is counted. */
    SPAN,
    TICK,
    /** One of the words that are offered. */
    CHOICE,
    /** A list of texts, one in a line. */
    LINES,
    /** A list of pairs of numbers, one pair in a line. */
    ROWS;

    /** For templates. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
