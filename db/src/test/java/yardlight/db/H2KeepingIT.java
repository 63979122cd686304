package yardlight.db;

class H2KeepingIT extends KeepingContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
