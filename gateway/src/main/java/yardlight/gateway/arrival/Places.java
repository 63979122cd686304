package yardlight.gateway.arrival;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Those that are waited for. Each costs its connection's buffers, so there are not endlessly many; when there are too many
 * it is the one that has taken longest that goes, for the next is most likely quicker.
 */
final class Places {

    private final int most;
    private final Set<Arrival> taken = new LinkedHashSet<>();

    Places(int most) {
        this.most = most;
    }

    void enter(Arrival arrival) {
        Arrival longest = null;
        synchronized (taken) {
            taken.add(arrival);
            if (taken.size() > most) {
                longest = taken.iterator().next();
                taken.remove(longest);
            }
        }
        if (longest != null) {
            longest.giveUp();
        }
    }

    void leave(Arrival arrival) {
        synchronized (taken) {
            taken.remove(arrival);
        }
    }
}
