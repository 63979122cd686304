package yardlight.gateway.due;

import yardlight.db.TestDatabase;

class H2ShutInRestartIT extends ShutInRestartContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
