package yardlight.gateway.lane;

import yardlight.db.TestDatabase;
import yardlight.gateway.SmallGateway;

class H2LaneIT extends LaneContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }

    /** Closes the database as H2 itself does after a write that failed. */
    @Override
    void cut(SmallGateway gateway) {
        gateway.jdbc().execute("shutdown immediately");
    }
}
