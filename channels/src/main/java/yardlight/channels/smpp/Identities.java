package yardlight.channels.smpp;

import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Names for incoming texts, which SMPP 3.4 does not give: a deliver_sm has no message id, and its sequence number is another
 * one when it is brought again.
 *
 * <p>So the same words from the same person are the same text again only if the centre has reason to bring them again: we had
 * not taken them, or the session ended within {@link #DOUBT} of our saying so. Else they are a new text: somebody who writes
 * OK twice means it twice. In memory only: what is brought again to a gateway that was started anew is a new text.
 */
final class Identities {

    static final Duration DOUBT = Duration.ofMinutes(2);

    private static final int MOST = 1_000;

    private final Map<String, Named> named = new LinkedHashMap<>();

    /** For two within a millisecond, and for a clock that was set back. */
    private long names;

    private record Named(String name, Object session, boolean taken, Instant at) {}

    /**
     * @param words everything that is the same when a text is brought again
     * @param session over which it came
     */
    synchronized String of(String words, Object session, Instant now) {
        Named before = named.get(words);
        boolean again = before != null
                && (!before.taken()
                        || before.session() != session
                                && before.at().plus(DOUBT).isAfter(now));
        String name = again ? before.name() : words + "." + now.toEpochMilli() + "." + ++names;
        if (!again || !before.taken()) {
            named.remove(words);
            named.put(words, new Named(name, session, false, now));
            bound();
        }
        return name;
    }

    /** It was kept for good, and the centre is being told so over this session. */
    synchronized void taken(String words, Object session, Instant now) {
        named.computeIfPresent(words, (any, before) -> new Named(before.name(), session, true, now));
    }

    private void bound() {
        Iterator<String> oldest = named.keySet().iterator();
        while (named.size() > MOST) {
            oldest.next();
            oldest.remove();
        }
    }
}
