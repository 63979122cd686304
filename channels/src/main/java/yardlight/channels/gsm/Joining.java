package yardlight.channels.gsm;

import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
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

    /** So long after a text was kept its parts may come once more; a phone does not use a reference again as soon. */
    static final Duration REPEATED = Duration.ofMinutes(10);

    private final Map<Key, Parts> texts = new LinkedHashMap<>();

    private record Key(String from, int reference, int total) {}

    private record Parts(Instant since, boolean kept, SortedMap<Integer, String> bySequence) {

        boolean isOver(Instant now) {
            return since.plus(kept ? REPEATED : LONGEST).isBefore(now);
        }
    }

    /** What is there of a text with the part that has just come. */
    public enum State {
        /** Something is missing still. */
        WAITS,
        /** All of it. */
        WHOLE,
        /** It was {@linkplain Joining#kept kept} before, and this part of it has come once more: there is nothing to do. */
        KEPT_BEFORE
    }

    /**
     * What came of a part.
     *
     * @param text the whole one with {@link State#WHOLE}, else empty
     */
    public record Joined(State state, String text) {}

    /**
     * Takes one part in. The parts stay until {@link #kept}: who cannot keep the whole for good may bring any part again, and
     * gets the whole again.
     *
     * @param from who wrote it, as the carrier says
     * @param now when it came; what has waited for an hour by then is forgotten
     */
    public synchronized Joined add(String from, Concatenation part, String text, Instant now) {
        texts.values().removeIf(parts -> parts.isOver(now));
        var key = new Key(from, part.reference(), part.total());
        Parts before = texts.get(key);
        if (before != null && before.kept()) {
            if (text.equals(before.bySequence().get(part.sequence()))) {
                return new Joined(State.KEPT_BEFORE, "");
            }
            texts.remove(key);
        }
        Parts parts = texts.computeIfAbsent(key, any -> new Parts(now, false, new TreeMap<>()));
        parts.bySequence().put(part.sequence(), text);
        bound();
        return parts.bySequence().size() == part.total()
                ? new Joined(State.WHOLE, String.join("", parts.bySequence().values()))
                : new Joined(State.WAITS, "");
    }

    /** The whole text of this part has been kept for good. */
    public synchronized void kept(String from, Concatenation part, Instant now) {
        texts.computeIfPresent(
                new Key(from, part.reference(), part.total()),
                (any, parts) -> new Parts(now, true, parts.bySequence()));
    }

    private void bound() {
        Iterator<Key> oldest = texts.keySet().iterator();
        while (texts.size() > MOST) {
            oldest.next();
            oldest.remove();
        }
    }
}
