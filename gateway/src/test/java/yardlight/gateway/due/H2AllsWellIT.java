package yardlight.gateway.due;

import yardlight.db.TestDatabase;

class H2AllsWellIT extends AllsWellContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
