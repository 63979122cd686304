package yardlight.db.report;

import yardlight.db.TestDatabase;

class PostgresPastIT extends PastContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
