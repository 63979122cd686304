package yardlight.db.due;

import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

class H2DuesIT extends DuesContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }

    @Override
    Dues dues(JdbcTemplate jdbc) {
        return new H2Dues(jdbc);
    }

    @Override
    String series(int count) {
        return "system_range(1, " + count + ")";
    }

    @Override
    void analyze() {
        jdbc.execute("analyze");
    }
}
