package yardlight.gateway.dispatch;

import yardlight.db.TestDatabase;

class H2OutageIT extends OutageContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
