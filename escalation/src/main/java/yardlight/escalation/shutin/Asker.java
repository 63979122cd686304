package yardlight.escalation.shutin;

import java.util.Locale;

/**
 * Who or what asked for it.
 *
 * @param by contact or login of a person; else the alarm that was the reason
 */
public record Asker(Kind kind, String by) {

    public enum Kind {
        /** A person, on the page. */
        PAGE,
        /** A person, by two texts. */
        TEXT,
        /** A rung of the ladder: a critical alarm stayed unanswered. */
        LADDER,
        /** The time to overflow fell below the site's last call. */
        LAST_CALL;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** The kind with this word. */
        public static Kind of(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
        }

        public boolean person() {
            return this == PAGE || this == TEXT;
        }
    }

    /** For the log: {@code ana by text}. */
    public String words() {
        return switch (kind) {
            case PAGE -> by + " on the page";
            case TEXT -> by + " by text";
            case LADDER -> "the ladder, as nobody answered " + by;
            case LAST_CALL -> "last call: the time to overflow of " + by;
        };
    }
}
