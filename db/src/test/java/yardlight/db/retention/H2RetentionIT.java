package yardlight.db.retention;

import yardlight.db.TestDatabase;

class H2RetentionIT extends RetentionContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
