package yardlight.db.journal;

import yardlight.db.TestDatabase;

class H2SwapRoundTripIT extends SwapRoundTripContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
