package yardlight.db.person;

import yardlight.db.TestDatabase;

class PostgresPeopleIT extends PeopleContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
