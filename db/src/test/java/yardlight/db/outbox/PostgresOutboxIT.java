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

    @Test
    void lets_nobody_send_what_another_gateway_has_claimed_meanwhile() {
        queued("a", "mail", NOW);
        Outbox slow = new PostgresOutbox(jdbc, "slow");
        Outbox other = new PostgresOutbox(jdbc, "other");
        Outgoing claimed = slow.claim("mail", NOW, 1).get(0);
        other.claim("mail", NOW.plusSeconds(180), 1);

        assertThat(slow.wanted(claimed, NOW.plusSeconds(181))).isFalse();
        assertThat(other.wanted(claimed, NOW.plusSeconds(181))).isTrue();
    }

    @Test
    void begins_the_lease_anew_right_before_sending() {
        queued("a", "mail", NOW);
        Outbox slow = new PostgresOutbox(jdbc, "slow");
        Outgoing claimed = slow.claim("mail", NOW, 1).get(0);

        assertThat(slow.wanted(claimed, NOW.plusSeconds(170))).isTrue();

        assertThat(new PostgresOutbox(jdbc, "other").claim("mail", NOW.plusSeconds(200), 1))
                .isEmpty();
    }
}
