package yardlight.db.outbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

class PostgresOutboxIT extends OutboxContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }

    private final AtomicLong nanos = new AtomicLong(-5);

    @Override
    Outbox outbox(JdbcTemplate jdbc) {
        return gateway("one");
    }

    @Test
    void gives_to_another_gateway_what_a_dead_one_had_claimed_once_its_lease_is_over() {
        queued("a", "mail", NOW);
        gateway("dead").claim("mail", NOW, 1);
        Outbox other = gateway("other");

        pass(Duration.ofSeconds(2));
        assertThat(other.claim("mail", NOW, 1)).isEmpty();
        pass(Duration.ofSeconds(1));
        assertThat(other.claim("mail", NOW, 1)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-PT10H", "-PT10M", "PT10M", "PT10H"})
    void leaves_to_a_gateway_what_it_has_claimed_however_far_the_clocks_are_apart(Duration ahead) {
        queued("a", "mail", NOW.minusSeconds(36_000));
        Outgoing claimed = gateway("one").claim("mail", NOW, 1).get(0);
        Outbox other = gateway("other");

        assertThat(other.claim("mail", NOW.plus(ahead), 1)).isEmpty();

        assertThat(claimed.queuedAt()).isBeforeOrEqualTo(NOW.plus(ahead));
        pass(Duration.ofSeconds(3));
        assertThat(other.claim("mail", NOW.plus(ahead), 1)).hasSize(1);
    }

    @Test
    void lets_nobody_send_what_another_gateway_has_claimed_meanwhile() {
        queued("a", "mail", NOW);
        Outbox slow = gateway("slow");
        Outbox other = gateway("other");
        Outgoing claimed = slow.claim("mail", NOW, 1).get(0);
        pass(Duration.ofSeconds(4));
        other.claim("mail", NOW, 1);

        assertThat(slow.wanted(claimed)).isFalse();
        assertThat(other.wanted(claimed)).isTrue();
    }

    @Test
    void begins_the_lease_anew_right_before_sending() {
        queued("a", "mail", NOW);
        Outbox slow = gateway("slow");
        Outgoing claimed = slow.claim("mail", NOW, 1).get(0);
        pass(Duration.ofSeconds(3));

        assertThat(slow.wanted(claimed)).isTrue();

        pass(Duration.ofSeconds(2));
        assertThat(gateway("other").claim("mail", NOW, 1)).isEmpty();
    }

    @Test
    void keeps_what_is_in_hand_for_as_long_as_its_claimer_lives() {
        queued("a", "mail", NOW);
        Outbox slow = gateway("slow");
        Outbox other = gateway("other");
        slow.claim("mail", NOW, 1);

        for (int second = 1; second <= 60; second++) {
            pass(Duration.ofSeconds(1).plusMillis(1));
            slow.renew();
            assertThat(other.claim("mail", NOW, 1)).isEmpty();
        }

        pass(Duration.ofSeconds(3));
        assertThat(other.claim("mail", NOW, 1)).hasSize(1);
    }

    @Test
    void does_not_keep_what_is_off_its_hands() {
        queued("a", "mail", NOW);
        Outbox one = gateway("one");
        one.done(one.claim("mail", NOW, 1).get(0));
        pass(Duration.ofSeconds(3));

        one.renew();

        assertThat(gateway("other").claim("mail", NOW, 1)).hasSize(1);
    }

    @Test
    void does_not_take_back_what_another_gateway_has_claimed_meanwhile() {
        queued("a", "mail", NOW);
        Outbox slow = gateway("slow");
        Outbox other = gateway("other");
        slow.claim("mail", NOW, 1);
        pass(Duration.ofSeconds(4));
        Outgoing taken = other.claim("mail", NOW, 1).get(0);

        slow.renew();

        assertThat(other.wanted(taken)).isTrue();
    }

    private Outbox gateway(String claimer) {
        return new PostgresOutbox(jdbc, claimer, nanos::get);
    }

    /** So much time passes, for the database and here. */
    private void pass(Duration time) {
        nanos.addAndGet(time.toNanos());
        jdbc.update("update outbox set leased_until = leased_until - ? * interval '1 millisecond'", time.toMillis());
    }
}
