package yardlight.db;

class PostgresKeepingIT extends KeepingContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
