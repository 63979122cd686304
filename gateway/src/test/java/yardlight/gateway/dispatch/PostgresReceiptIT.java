package yardlight.gateway.dispatch;

import yardlight.db.TestDatabase;

class PostgresReceiptIT extends ReceiptContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
