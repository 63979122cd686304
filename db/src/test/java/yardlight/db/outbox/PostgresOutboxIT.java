package yardlight.db.outbox;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

class PostgresOutboxIT extends OutboxContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }

    @Override
    Outbox outbox(JdbcTemplate jdbc) {
        return new PostgresOutbox(jdbc, "one");
    }

    @Test
    void gives_to_another_gateway_what_a_dead_one_had_claimed_once_its_lease_is_over() {
        queued("a", "mail", NOW);
        new PostgresOutbox(jdbc, "dead").claim("mail", NOW, 1);
        Outbox other = new PostgresOutbox(jdbc, "other");

        assertThat(other.claim("mail", NOW.plusSeconds(179), 1)).isEmpty();
        assertThat(other.claim("mail", NOW.plusSeconds(180), 1)).hasSize(1);
    }
}
