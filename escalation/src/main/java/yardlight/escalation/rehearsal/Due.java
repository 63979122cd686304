package yardlight.escalation.rehearsal;

import java.time.Instant;
import java.util.Comparator;
import yardlight.escalation.Stimulus;

/**
 * Something that will happen at a known time. What is due together happens in the order in which it was scheduled, so
 * that the same night always runs the same way.
 */
record Due(Instant at, long order, Stimulus stimulus) implements Comparable<Due> {

    private static final Comparator<Due> IN_ORDER =
            Comparator.comparing(Due::at).thenComparing(Due::order);

    @Override
    public int compareTo(Due other) {
        return IN_ORDER.compare(this, other);
    }
}
