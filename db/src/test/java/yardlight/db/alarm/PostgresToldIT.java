package yardlight.db.alarm;

import yardlight.db.TestDatabase;

class PostgresToldIT extends ToldContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
