package yardlight.db.alarm;

import yardlight.db.TestDatabase;

class PostgresAlarmsIT extends AlarmsContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
