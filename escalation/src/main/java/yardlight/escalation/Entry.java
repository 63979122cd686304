package yardlight.escalation;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * A line for the log.
 *
 * @param what what happened
 * @param about ids of what it is about, by the words of the contract: site, box, alarm, callout, notice, contact, channel, person
 * @param words one sentence for the person who reads the log
 */
public record Entry(What what, Map<String, String> about, String words) {

    /** Everything that the engine records. */
    public enum What {
        EVENT,
        ALARM,
        FLOOD,
        CALLOUT,
        NOTICE,
        ATTEMPT,
        CARRIER,
        LINE,
        ANSWER,
        BOX,
        ROSTER,
        SETUP,
        LOGIN,
        RESTORE,
        MOVE,
        CLOCK,
        SHUT_IN,
        HEAD,
        REFUSED;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public Entry {
        about = java.util.Collections.unmodifiableMap(new TreeMap<>(about));
    }
}
