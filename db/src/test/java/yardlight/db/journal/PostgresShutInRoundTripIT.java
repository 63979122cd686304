package yardlight.db.journal;

import yardlight.db.TestDatabase;

class PostgresShutInRoundTripIT extends ShutInRoundTripContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
