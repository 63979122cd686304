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

        assertThat(other.claim("mail", NOW.plusMillis(2999), 1)).isEmpty();
        assertThat(other.claim("mail", NOW.plusSeconds(3), 1)).hasSize(1);
    }

    @Test
    void lets_nobody_send_what_another_gateway_has_claimed_meanwhile() {
        queued("a", "mail", NOW);
        Outbox slow = new PostgresOutbox(jdbc, "slow");
        Outbox other = new PostgresOutbox(jdbc, "other");
        Outgoing claimed = slow.claim("mail", NOW, 1).get(0);
        other.claim("mail", NOW.plusSeconds(4), 1);

        assertThat(slow.wanted(claimed, NOW.plusSeconds(5))).isFalse();
        assertThat(other.wanted(claimed, NOW.plusSeconds(5))).isTrue();
    }

    @Test
    void begins_the_lease_anew_right_before_sending() {
        queued("a", "mail", NOW);
        Outbox slow = new PostgresOutbox(jdbc, "slow");
        Outgoing claimed = slow.claim("mail", NOW, 1).get(0);

        assertThat(slow.wanted(claimed, NOW.plusSeconds(3))).isTrue();

        assertThat(new PostgresOutbox(jdbc, "other").claim("mail", NOW.plusSeconds(5), 1))
                .isEmpty();
    }

    @Test
    void keeps_what_is_in_hand_for_as_long_as_its_claimer_lives() {
        queued("a", "mail", NOW);
        Outbox slow = new PostgresOutbox(jdbc, "slow");
        Outbox other = new PostgresOutbox(jdbc, "other");
        slow.claim("mail", NOW, 1);

        for (int second = 1; second <= 60; second++) {
            slow.renew(NOW.plusSeconds(second).plusMillis(250));
            assertThat(other.claim("mail", NOW.plusSeconds(second), 1)).isEmpty();
        }

        assertThat(other.claim("mail", NOW.plusSeconds(65), 1)).hasSize(1);
    }

    @Test
    void does_not_keep_what_is_off_its_hands() {
        queued("a", "mail", NOW);
        Outbox one = new PostgresOutbox(jdbc, "one");
        one.done(one.claim("mail", NOW, 1).get(0));

        one.renew(NOW.plusSeconds(3));

        assertThat(new PostgresOutbox(jdbc, "other").claim("mail", NOW.plusSeconds(4), 1))
                .hasSize(1);
    }

    @Test
    void does_not_take_back_what_another_gateway_has_claimed_meanwhile() {
        queued("a", "mail", NOW);
        Outbox slow = new PostgresOutbox(jdbc, "slow");
        Outbox other = new PostgresOutbox(jdbc, "other");
        slow.claim("mail", NOW, 1);
        Outgoing taken = other.claim("mail", NOW.plusSeconds(4), 1).get(0);

        slow.renew(NOW.plusSeconds(5));

        assertThat(other.wanted(taken, NOW.plusSeconds(5))).isTrue();
    }
}
