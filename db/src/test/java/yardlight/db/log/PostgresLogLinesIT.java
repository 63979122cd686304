package yardlight.db.log;

import yardlight.db.TestDatabase;

class PostgresLogLinesIT extends LogLinesContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
