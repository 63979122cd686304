package yardlight.db.alarm;

import yardlight.db.TestDatabase;

class H2AlarmsIT extends AlarmsContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
