package yardlight.db.person;

import java.util.Locale;

/** What a person may do. */
public enum Role {
    /** Everything. */
    OWNER,
    /** Read, acknowledge and shelve. */
    HAND,
    READER;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Role of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
