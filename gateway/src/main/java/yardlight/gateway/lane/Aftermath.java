package yardlight.gateway.lane;

import yardlight.db.journal.Stored;

/** Is told, by the lane's own thread, after each transaction: it may wake somebody and must not do more. */
@FunctionalInterface
public interface Aftermath {

    void stored(Stored stored);
}
