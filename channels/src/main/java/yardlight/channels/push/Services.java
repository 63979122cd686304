package yardlight.channels.push;

import java.net.URI;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import yardlight.channels.Attempt;

/**
 * The push services that have taken something from us since the start, and whether they did well the last time.
 *
 * <p>Each maker of browsers has one, and the address of a line could name any host. So that one service that is down, or
 * one line that leads nowhere, does not keep messages from the others, push as a whole is in trouble only while all that
 * are known here are.
 */
final class Services {

    /** More makers than there are. */
    private static final int MOST = 16;

    private final Map<URI, Boolean> wellByRoot = new LinkedHashMap<>();

    /** The same attempt, and about every message only if all services fail. */
    synchronized Attempt heard(URI root, Attempt attempt) {
        if (attempt.outcome() == Attempt.Outcome.ACCEPTED
                && (wellByRoot.size() < MOST || wellByRoot.containsKey(root))) {
            wellByRoot.put(root, true);
        }
        wellByRoot.replace(root, !attempt.general());
        boolean general = attempt.general() && wellByRoot.containsKey(root) && !wellByRoot.containsValue(true);
        return new Attempt(attempt.outcome(), attempt.detail(), general, attempt.retryAfter(), attempt.reference());
    }

    /** It answered a knock. */
    synchronized void answered(URI root) {
        wellByRoot.replace(root, true);
    }

    /** Each in its turn; empty while none is known. */
    synchronized Optional<URI> next() {
        Optional<URI> first = wellByRoot.keySet().stream().findFirst();
        first.ifPresent(root -> wellByRoot.put(root, wellByRoot.remove(root)));
        return first;
    }
}
