package yardlight.db.report;

import yardlight.db.TestDatabase;

class H2PastIT extends PastContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
