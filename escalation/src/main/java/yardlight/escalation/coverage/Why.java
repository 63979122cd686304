package yardlight.escalation.coverage;

import java.util.Locale;

/** Why an alarm is called to nobody at once, or to nobody of whom it is known that they are reached. */
public enum Why {
    /** Everybody who is on the ladder then has quiet hours, and they let nothing of this priority through. */
    QUIET_HOURS,
    /** Somebody stands in who sleeps or has no line, and whoever has the tour by the roster would be called. */
    RELIEF,
    /** A roster of the ladder has nobody on call, and the ladder has nobody else. */
    ROSTER_EMPTY,
    /** Nobody who is on the ladder then has a line that may be used. */
    NO_LINE,
    /** The ladder calls nobody at all. */
    NOBODY,
    /** Somebody is called at once, by lines of which nothing has shown for 30 days that they work. */
    UNPROVEN_LINE;

    /** {@code quiet-hours}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
