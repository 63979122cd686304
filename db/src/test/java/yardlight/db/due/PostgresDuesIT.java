package yardlight.db.due;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.columns.Column;

class PostgresDuesIT extends DuesContract {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }

    @Override
    Dues dues(JdbcTemplate jdbc) {
        return new PostgresDues(jdbc, "one");
    }

    @Override
    String series(int count) {
        return "generate_series(1, " + count + ") as x";
    }

    @Override
    void analyze() {
        jdbc.execute("vacuum analyze due");
    }

    @Test
    void give_to_another_gateway_what_a_dead_one_had_claimed_once_its_lease_is_over() {
        jdbc.update(
                "insert into due (kind, subject, due_at, ready_at) values ('box', 'mesa-9-box', ?, ?)",
                Column.stored(NOW),
                Column.stored(NOW));
        Dues dead = new PostgresDues(jdbc, "dead");
        Dues other = new PostgresDues(jdbc, "other");
        dead.claim(NOW, 1);

        assertThat(other.claim(NOW, 1)).isEmpty();
        assertThat(other.claim(NOW.plus(Duration.ofHours(10)), 1))
                .as("by a clock that is ahead")
                .isEmpty();
        jdbc.update("update due set leased_until = leased_until - interval '3 seconds'");
        assertThat(other.claim(NOW, 1)).hasSize(1);
    }
}
