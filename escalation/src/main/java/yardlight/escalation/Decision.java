package yardlight.escalation;

import java.util.List;
import java.util.Map;

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

    /** A refusal changes nothing and leaves only its line in the log. */
    static Decision refused(Answer.Refusal refusal) {
        var line = new Entry(Entry.What.REFUSED, Map.of(), refusal.reason());
        return new Decision(Changes.of(List.of()), List.of(line), refusal);
    }
}
