package yardlight.db.evidence;

import yardlight.db.TestDatabase;

class H2LogTreeIT extends LogTreeContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
