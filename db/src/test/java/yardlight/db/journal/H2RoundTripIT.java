package yardlight.db.journal;

import yardlight.db.TestDatabase;

class H2RoundTripIT extends RoundTripContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
