package yardlight.gateway.due;

import yardlight.db.TestDatabase;

class PostgresShutInRestartIT extends ShutInRestartContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
