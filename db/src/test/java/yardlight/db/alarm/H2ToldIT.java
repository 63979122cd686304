package yardlight.db.alarm;

import yardlight.db.TestDatabase;

class H2ToldIT extends ToldContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
