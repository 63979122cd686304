package yardlight.escalation;

import java.util.List;

/**
 * What a stimulus led to.
 *
 * @param changes what to store
 * @param entries what to write into the log, in order
 * @param answer what to tell whoever caused it
 */
public record Decision(Changes changes, List<Entry> entries, Answer answer) {

    public Decision {
        entries = List.copyOf(entries);
    }
}
