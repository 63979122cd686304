package yardlight.escalation.alarm;

import java.util.Locale;

/** The nine states of an alarm (ISA-18.2 alarm state transition diagram, with the latched states of its 2009 edition). */
public enum AlarmState {
    NORMAL,
    UNACKNOWLEDGED,
    ACKNOWLEDGED,
    RETURNED_UNACKNOWLEDGED,
    LATCHED_UNACKNOWLEDGED,
    LATCHED_ACKNOWLEDGED,
    SHELVED,
    SUPPRESSED_BY_DESIGN,
    OUT_OF_SERVICE;

    /** The word of the outside contract, such as {@code returned-unacknowledged}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether the alarm is kept from people: it is still followed, logged and counted, and calls nobody. */
    public boolean withheld() {
        return switch (this) {
            case SHELVED, SUPPRESSED_BY_DESIGN, OUT_OF_SERVICE -> true;
            case NORMAL,
                    UNACKNOWLEDGED,
                    ACKNOWLEDGED,
                    RETURNED_UNACKNOWLEDGED,
                    LATCHED_UNACKNOWLEDGED,
                    LATCHED_ACKNOWLEDGED -> false;
        };
    }

    /** Whether somebody still has to say that they know. */
    public boolean awaitsAnswer() {
        return switch (this) {
            case UNACKNOWLEDGED, RETURNED_UNACKNOWLEDGED, LATCHED_UNACKNOWLEDGED -> true;
            case NORMAL, ACKNOWLEDGED, LATCHED_ACKNOWLEDGED, SHELVED, SUPPRESSED_BY_DESIGN, OUT_OF_SERVICE -> false;
        };
    }

    /** Whether people are called for it: somebody has to answer, and it is not over. */
    public boolean calls() {
        return this == UNACKNOWLEDGED || this == LATCHED_UNACKNOWLEDGED;
    }
}
