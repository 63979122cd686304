package yardlight.escalation.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A ladder that is changed while it is climbed. Nothing is left out: the climb stays on its rung, wherever that is now, or goes on at
 * the first one that it has not called yet and calls what stands above that, also again. A rung is told by whom it calls, not by how
 * long and how often.
 *
 * @param was the ladder as it was climbed so far
 * @param now the ladder as it is from now on
 */
public record Edit(Ladder was, Ladder now) {

    /**
     * @param place where the climb is on the ladder as it is now
     * @param calls whether that rung has to be called, or was
     */
    public record Found(Place place, boolean calls) {}

    /**
     * Where a climb is now.
     *
     * @param called whether the rung at the place was called; else it is where the climb goes on
     */
    public Found of(Place place, boolean called) {
        List<Rung> before = was.rungs()
                .subList(
                        0, Math.min(place.rung() + (called ? 1 : 0), was.rungs().size()));
        int first = firstUncalled(before);
        for (int rung = first - 1; called && rung >= 0; rung--) {
            if (isWhatWasAt(place, rung)) {
                return new Found(new Place(place.climb(), rung, place.round()), false);
            }
        }
        // All that is left of the ladder was called, but not the rung that would be waited for: better once more than
        // not at all.
        int next = first < now.rungs().size() ? first : 0;
        int round = !called && isWhatWasAt(place, next) ? place.round() : 0;
        return new Found(new Place(place.climb(), next, round), true);
    }

    /** What is there twice has to have been called twice. */
    private int firstUncalled(List<Rung> before) {
        var left = new ArrayList<>(before);
        int first = 0;
        while (first < now.rungs().size() && take(left, now.rungs().get(first))) {
            first++;
        }
        return first;
    }

    private static boolean take(List<Rung> left, Rung rung) {
        for (Rung one : left) {
            if (same(one, rung)) {
                return left.remove(one);
            }
        }
        return false;
    }

    private boolean isWhatWasAt(Place place, int rung) {
        return place.rung() < was.rungs().size()
                && same(was.rungs().get(place.rung()), now.rungs().get(rung));
    }

    private static boolean same(Rung one, Rung other) {
        return Set.copyOf(one.call()).equals(Set.copyOf(other.call())) && one.asks() == other.asks();
    }
}
