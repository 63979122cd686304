package yardlight.db.moving;

import yardlight.db.disk.Vendor;

/**
 * Makes texts such that a database keeps them. PostgreSQL keeps any but those with U+0000 (its manual, 8.3, Character Types),
 * which H2 may have from before they were refused; each U+0000 becomes U+FFFD there. The log's lines are signed and stay as
 * they are.
 */
final class Fitted {

    private static final char NUL = 0;
    private static final char REPLACEMENT = '\ufffd';
    private static final String LOG = "log_line";

    private final boolean keepsAll;
    private long changed;

    Fitted(Vendor vendor) {
        this.keepsAll = vendor != Vendor.POSTGRESQL;
    }

    String text(String table, String text) {
        if (keepsAll || text.indexOf(NUL) < 0 || table.equals(LOG)) {
            return text;
        }
        changed++;
        return text.replace(NUL, REPLACEMENT);
    }

    /** For the line of the log that says what arrived; empty when all texts did as they were. */
    String words() {
        return changed == 0 ? "" : "; texts in which U+0000 became U+FFFD: " + changed;
    }
}
