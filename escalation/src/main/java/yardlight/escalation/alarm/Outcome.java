package yardlight.escalation.alarm;

import java.util.Locale;

/** What a report did, in the words of the outside contract. */
public enum Outcome {
    /** A new activation. */
    OCCURRED,
    /** Already active: counted, nothing else. */
    REPEATED,
    /** The condition is over. */
    RETURNED,
    /** The same box has sent the same id before. */
    DUPLICATE,
    /** Nothing changes, at least not yet: an off-delay runs, or the report is older than what is known. */
    NOTED,
    /** The on-delay runs. */
    DELAYED,
    SHELVED,
    SUPPRESSED,
    OUT_OF_SERVICE;

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
