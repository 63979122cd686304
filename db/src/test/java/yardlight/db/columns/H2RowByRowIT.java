package yardlight.db.columns;

import yardlight.db.TestDatabase;

class H2RowByRowIT extends RowByRowContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
