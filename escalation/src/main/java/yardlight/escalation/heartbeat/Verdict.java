package yardlight.escalation.heartbeat;

import java.util.Locale;

/** What a box's silence means; the condition of the alarm on point {@code box}. */
public enum Verdict {
    POWER_OFF,
    COMMS_LOSS,
    /** Undecided. */
    SILENT;

    public String condition() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
