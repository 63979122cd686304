package yardlight.gateway.lane;

import java.util.Collection;
import yardlight.db.journal.Wants;

/** Nothing to do: it only makes the lane's thread look up. */
record Nudge() implements Work<Void> {

    @Override
    public void wants(Wants wants, Collection<String> names) {}

    @Override
    public Void take(Turn turn) {
        return null;
    }

    @Override
    public int weight() {
        return 0;
    }

    @Override
    public String about() {
        return "nothing";
    }
}
