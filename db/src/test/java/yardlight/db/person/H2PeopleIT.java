package yardlight.db.person;

import yardlight.db.TestDatabase;

class H2PeopleIT extends PeopleContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
