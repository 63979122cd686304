package yardlight.db.incoming;

import yardlight.db.TestDatabase;

class H2IncomingIT extends IncomingContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
