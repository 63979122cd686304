package yardlight.db.incoming;

import yardlight.db.TestDatabase;

class PostgresIncomingIT extends IncomingContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
