package yardlight.db.columns;

import yardlight.db.TestDatabase;

class PostgresRowByRowIT extends RowByRowContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
