package yardlight.gateway.dispatch;

import yardlight.db.TestDatabase;

class PostgresDispatcherIT extends DispatcherContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
