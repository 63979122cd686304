package yardlight.db.journal;

import yardlight.db.TestDatabase;

class H2ShutInRoundTripIT extends ShutInRoundTripContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
