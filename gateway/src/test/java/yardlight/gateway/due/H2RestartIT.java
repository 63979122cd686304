package yardlight.gateway.due;

import yardlight.db.TestDatabase;

class H2RestartIT extends RestartContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
