package yardlight.db.journal;

import yardlight.db.TestDatabase;

class PostgresJournalIT extends JournalContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
