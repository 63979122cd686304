package yardlight.escalation.rehearsal;

import java.time.Instant;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/**
 * A text that called somebody and that a carrier took.
 *
 * @param at when it was written
 * @param channel by which it went
 * @param sites what it was about; several when it was bundled
 */
public record PastText(Instant at, String contact, String channel, Set<String> sites) {

    public PastText {
        // Sorted, so that the same night reads the same every time.
        sites = java.util.Collections.unmodifiableSet(new TreeSet<>(sites));
    }

    /** By mail: that wakes nobody, and is counted apart. */
    public boolean mail() {
        return channel.equals("mail");
    }

    /** Of these sites. */
    public static PastText of(Instant at, String contact, String channel, Collection<String> sites) {
        return new PastText(at, contact, channel, new TreeSet<>(sites));
    }
}
