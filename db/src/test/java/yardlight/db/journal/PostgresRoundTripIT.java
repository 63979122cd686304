package yardlight.db.journal;

import yardlight.db.TestDatabase;

class PostgresRoundTripIT extends RoundTripContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
