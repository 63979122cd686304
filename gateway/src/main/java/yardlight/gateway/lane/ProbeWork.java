package yardlight.gateway.lane;

import java.util.Collection;
import yardlight.db.journal.Wants;

/** Nothing to decide, and stored all the same: each transaction writes the lane's own row. */
record ProbeWork() implements Work<Void> {

    @Override
    public void wants(Wants wants, Collection<String> names) {}

    @Override
    public Void take(Turn turn) {
        return null;
    }

    @Override
    public boolean patient() {
        return true;
    }

    @Override
    public String about() {
        return "a probe";
    }
}
