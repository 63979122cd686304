package yardlight.db.journal;

import yardlight.db.TestDatabase;

class PostgresSwapRoundTripIT extends SwapRoundTripContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
