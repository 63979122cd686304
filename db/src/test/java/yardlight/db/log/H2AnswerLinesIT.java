package yardlight.db.log;

import yardlight.db.TestDatabase;

class H2AnswerLinesIT extends AnswerLinesContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }
}
