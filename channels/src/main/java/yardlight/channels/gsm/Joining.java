package yardlight.channels.gsm;

import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Puts texts together again whose parts come one by one, in any order, some twice. May be used by any number of threads.
 *
 * <p>Kept in memory only, bounded in number and time: a reference of 8 bits comes again soon, and parts of an old text must
 * not become parts of a new one.
 */
public final class Joining {

    static final int MOST = 200;
    static final Duration LONGEST = Duration.ofHours(1);

    private final Map<Key, Parts> waiting = new LinkedHashMap<>();

    private record Key(String from, int reference, int total) {}

    private record Parts(Instant since, SortedMap<Integer, String> bySequence) {}

    /**
     * Takes one part in. The parts stay until {@link #done}: who cannot keep the whole for good may bring its last part
     * again.
     *
     * @param from who wrote it, as the carrier says
     * @param now when it came; what has waited for an hour by then is forgotten
     * @return the whole text if nothing of it is missing
     */
    public synchronized Optional<String> add(String from, Concatenation part, String text, Instant now) {
        waiting.values().removeIf(parts -> parts.since().plus(LONGEST).isBefore(now));
        var key = new Key(from, part.reference(), part.total());
        Parts parts = waiting.computeIfAbsent(key, any -> new Parts(now, new TreeMap<>()));
        parts.bySequence().put(part.sequence(), text);
        bound();
        return parts.bySequence().size() == part.total()
                ? Optional.of(String.join("", parts.bySequence().values()))
                : Optional.empty();
    }

    /** The whole text of this part has been kept for good. */
    public synchronized void done(String from, Concatenation part) {
        waiting.remove(new Key(from, part.reference(), part.total()));
    }

    private void bound() {
        Iterator<Key> oldest = waiting.keySet().iterator();
        while (waiting.size() > MOST) {
            oldest.next();
            oldest.remove();
        }
    }
}
