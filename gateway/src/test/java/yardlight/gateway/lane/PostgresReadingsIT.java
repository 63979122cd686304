package yardlight.gateway.lane;

import yardlight.db.TestDatabase;

class PostgresReadingsIT extends ReadingsContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
