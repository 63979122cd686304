package yardlight.db.evidence;

import yardlight.db.TestDatabase;

class PostgresLogTreeIT extends LogTreeContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
