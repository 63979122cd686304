package yardlight.db.turn;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

class TurnsIT {

    @Test
    void on_h2_it_is_always_the_one_gateway_s() {
        var turns = new Turns(TestDatabase.H2.newDataSource());

        assertThat(turns.mine("mailbox")).isTrue();
    }

    @Test
    void on_postgresql_it_is_one_s_until_that_one_is_closed() {
        String url = TestDatabase.POSTGRESQL.newUrl();
        try (HikariDataSource one = TestDatabase.POSTGRESQL.migrated(url);
                HikariDataSource other = TestDatabase.POSTGRESQL.migrated(url)) {
            var first = new Turns(one);
            var second = new Turns(other);
            assertThat(first.mine("mailbox")).isTrue();
            assertThat(second.mine("mailbox")).isFalse();
            assertThat(second.mine("something else")).isTrue();
            assertThat(first.mine("mailbox")).isTrue();

            first.close();

            assertThat(first.mine("mailbox")).isFalse();
            assertThat(second.mine("mailbox")).isTrue();
            second.close();
        }
    }

    @Test
    void on_postgresql_it_is_for_whoever_asks_next_once_one_has_left_it() {
        String url = TestDatabase.POSTGRESQL.newUrl();
        try (HikariDataSource one = TestDatabase.POSTGRESQL.migrated(url);
                HikariDataSource other = TestDatabase.POSTGRESQL.migrated(url)) {
            var first = new Turns(one);
            var second = new Turns(other);
            first.leave("mailbox");
            assertThat(first.mine("mailbox")).isTrue();

            first.leave("mailbox");

            assertThat(second.mine("mailbox")).isTrue();
            assertThat(first.mine("mailbox")).isFalse();
            second.leave("mailbox");
            assertThat(first.mine("mailbox")).isTrue();
            first.close();
        }
    }

    @Test
    void on_postgresql_it_is_the_other_s_when_one_has_lost_its_connection() {
        String url = TestDatabase.POSTGRESQL.newUrl();
        try (HikariDataSource one = TestDatabase.POSTGRESQL.migrated(url);
                HikariDataSource other = TestDatabase.POSTGRESQL.migrated(url)) {
            var first = new Turns(one);
            var second = new Turns(other);
            assertThat(first.mine("mailbox")).isTrue();

            // Comes back once the connection has ended, at the latest after 10 s.
            new JdbcTemplate(other)
                    .queryForList("select pg_terminate_backend(pid, 10000) from pg_locks where locktype = 'advisory'");

            assertThat(second.mine("mailbox")).isTrue();
            assertThat(first.mine("mailbox")).isFalse();
            second.close();
        }
    }
}
