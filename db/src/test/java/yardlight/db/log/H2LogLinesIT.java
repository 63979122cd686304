package yardlight.db.log;

import yardlight.db.TestDatabase;

class H2LogLinesIT extends LogLinesContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
