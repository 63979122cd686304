package yardlight.gateway.dispatch;

import yardlight.db.TestDatabase;

class PostgresOutageIT extends OutageContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
