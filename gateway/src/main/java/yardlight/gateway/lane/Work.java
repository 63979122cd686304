package yardlight.gateway.lane;

import java.util.Collection;
import yardlight.db.journal.Wants;

/** One thing that was handed in. */
interface Work<T> {

    /** Says what is going to be asked for, so that it is read for the whole batch at once. */
    void wants(Wants wants, Collection<String> names);

    /** Decides, and then lays what was decided over the turn: nothing at all when it throws. */
    T take(Turn turn);

    /** How much it is: the events in it. */
    default int weight() {
        return 1;
    }

    /** Whether it may wait a moment for others to share a transaction with. Nobody's sleep depends on it. */
    default boolean patient() {
        return false;
    }

    /** What it is about, for the gateway's own log when it fails. */
    String about();
}
