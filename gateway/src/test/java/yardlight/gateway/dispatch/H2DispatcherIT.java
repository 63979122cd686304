package yardlight.gateway.dispatch;

import yardlight.db.TestDatabase;

class H2DispatcherIT extends DispatcherContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
