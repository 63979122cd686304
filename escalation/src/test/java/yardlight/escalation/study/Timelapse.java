package yardlight.escalation.study;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Leaves out the quiet middle: between two changes of the world that lie further apart than needed for everything that
 * follows from the first, time jumps. Nobody's clock and uptime know of it, so that it is as if the outage was shorter.
 */
final class Timelapse {

    private final List<Long> real;
    private final List<Long> played = new ArrayList<>();

    /**
     * @param changes when something changes, the first of them at any time
     * @param start when the first is played
     * @param longest how much of the time between two changes is played
     */
    Timelapse(TreeSet<Long> changes, long start, long longest) {
        real = List.copyOf(changes);
        long at = start;
        for (int i = 0; i < real.size(); i++) {
            at += i == 0 ? 0 : Math.min(longest, real.get(i) - real.get(i - 1));
            played.add(at);
        }
    }

    Span played(Span span) {
        return span.ever() ? new Span(at(span.from()), at(span.to())) : span;
    }

    private long at(long change) {
        return played.get(real.indexOf(change));
    }
}
