package yardlight.gateway.lane;

import yardlight.db.TestDatabase;

class H2ReadingsIT extends ReadingsContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
