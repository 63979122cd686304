package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;
import static yardlight.gateway.lane.Saying.active;
import static yardlight.gateway.lane.Saying.named;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.gateway.SmallGateway;

/** Somebody holds the lock that every transaction of the lane needs. */
class SlowDatabaseIT {

    private static final String BOX = "mesa-9-box";

    @ParameterizedTest
    @EnumSource
    void a_lock_that_is_held_gives_a_refusal_in_bounded_time_and_nothing_twice_afterwards(TestDatabase database)
            throws SQLException {
        try (var gateway = new SmallGateway(database, database.newUrl(), Fixtures.theSetup(), List.of(), "lane")) {
            try (Connection other = gateway.source().getConnection();
                    Statement lock = other.createStatement()) {
                other.setAutoCommit(false);
                lock.executeQuery("select * from lane for update").close();
                Instant began = Instant.now();

                assertThatThrownBy(() -> post(gateway)).isInstanceOf(LaneBusy.class);

                assertThat(Duration.between(began, Instant.now())).isLessThan(Duration.ofSeconds(17));
                other.rollback();
                other.setAutoCommit(true);
            }
            await().atMost(Duration.ofSeconds(30))
                    .ignoreExceptionsInstanceOf(LaneBusy.class)
                    .until(() -> post(gateway) == 1);

            assertThat(count(gateway, "alarm where current_key > ''")).isEqualTo(1);
            assertThat(count(gateway, "notice")).isEqualTo(1);
            assertThat(count(gateway, "event where outcome <> 'duplicate'")).isEqualTo(1);
        }
    }

    private static int post(SmallGateway gateway) {
        return gateway.lane()
                .events(BOX, List.of(named("once", active(Fixtures.TANK))), false)
                .size();
    }

    private static int count(SmallGateway gateway, String rows) {
        return gateway.jdbc().queryForObject("select count(*) from " + rows, Integer.class);
    }
}
