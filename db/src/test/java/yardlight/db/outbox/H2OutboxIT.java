package yardlight.db.outbox;

import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

class H2OutboxIT extends OutboxContract {

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }

    @Override
    Outbox outbox(JdbcTemplate jdbc) {
        return new H2Outbox(jdbc);
    }
}
