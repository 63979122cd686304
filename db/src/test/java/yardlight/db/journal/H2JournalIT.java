package yardlight.db.journal;

import yardlight.db.TestDatabase;

class H2JournalIT extends JournalContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
