package yardlight.escalation.alarm;

import java.util.Locale;

/** What can move an alarm from one state to another. */
public enum AlarmTrigger {
    OCCUR,
    RETURN,
    ACKNOWLEDGE,
    RESET,
    REALARM,
    SHELVE,
    UNSHELVE,
    SUPPRESS,
    UNSUPPRESS,
    REMOVE,
    RESTORE;

    /** As it reads in a refusal: {@code acknowledge}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
