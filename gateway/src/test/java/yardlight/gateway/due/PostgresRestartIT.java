package yardlight.gateway.due;

import yardlight.db.TestDatabase;

class PostgresRestartIT extends RestartContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
