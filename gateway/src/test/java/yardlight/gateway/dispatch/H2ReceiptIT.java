package yardlight.gateway.dispatch;

import yardlight.db.TestDatabase;

class H2ReceiptIT extends ReceiptContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
