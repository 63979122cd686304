package yardlight.gateway.incoming;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;

/**
 * Ends a conversation with a machine that nothing gives away: each would answer the other for ever (RFC 3834 2). What is asked
 * for is done all the same, and no person who answers calls needs so many answers.
 */
final class Turns {

    static final int MOST = 12;
    static final Duration WITHIN = Duration.ofMinutes(10);

    private static final int MOST_SENDERS = 10_000;

    private final Map<String, Deque<Instant>> answers = new HashMap<>();

    /** Whether one more goes to this sender; if so it counts. */
    synchronized boolean take(String sender, Instant now) {
        if (answers.size() > MOST_SENDERS) {
            answers.clear();
        }
        Deque<Instant> all = answers.computeIfAbsent(sender, any -> new ArrayDeque<>());
        all.removeIf(at -> at.isBefore(now.minus(WITHIN)));
        return all.size() < MOST && all.add(now);
    }
}
