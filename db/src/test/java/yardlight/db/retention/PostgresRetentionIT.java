package yardlight.db.retention;

import yardlight.db.TestDatabase;

class PostgresRetentionIT extends RetentionContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
