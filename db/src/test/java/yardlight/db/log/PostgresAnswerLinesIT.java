package yardlight.db.log;

import yardlight.db.TestDatabase;

class PostgresAnswerLinesIT extends AnswerLinesContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }
}
