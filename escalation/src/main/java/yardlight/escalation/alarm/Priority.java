package yardlight.escalation.alarm;

import java.util.Locale;
import java.util.Optional;

/** How urgent an alarm is, least first, so that the natural order is the order of urgency. */
public enum Priority {
    LOW,
    MEDIUM,
    HIGH,
    CRITICAL;

    /** The word of the outside contract: {@code low}, {@code medium}, {@code high}, {@code critical}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The priority that the contract calls by this word; empty when there is none. */
    public static Optional<Priority> of(String word) {
        for (Priority priority : values()) {
            if (priority.word().equals(word)) {
                return Optional.of(priority);
            }
        }
        return Optional.empty();
    }

    public boolean atLeast(Priority other) {
        return compareTo(other) >= 0;
    }

    public Priority orHigher(Priority other) {
        return atLeast(other) ? this : other;
    }
}
