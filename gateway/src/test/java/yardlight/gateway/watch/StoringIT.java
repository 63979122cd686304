package yardlight.gateway.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.gateway.SmallGateway;

/** A gateway that is up and whose writer is stuck, on both databases. */
class StoringIT {

    @ParameterizedTest
    @EnumSource
    void while_the_writer_is_stuck_nothing_is_said_to_be_well(TestDatabase database) throws SQLException {
        try (var gateway = new SmallGateway(database, database.newUrl(), Fixtures.theSetup(), List.of(), "lane")) {
            var storing = new Storing(gateway.probe(), Duration.ofSeconds(2));
            assertThat(storing.trouble()).isEmpty();

            try (Connection other = gateway.source().getConnection();
                    Statement lock = other.createStatement()) {
                other.setAutoCommit(false);
                lock.executeQuery("select * from lane for update").close();

                assertThat(storing.trouble()).isPresent();

                other.rollback();
                other.setAutoCommit(true);
            }
            await().atMost(Duration.ofSeconds(30)).until(() -> storing.trouble().isEmpty());
        }
    }

    @ParameterizedTest
    @EnumSource
    void to_ask_leaves_nothing_behind_but_the_number_of_the_transaction(TestDatabase database) {
        try (var gateway = new SmallGateway(database, database.newUrl(), Fixtures.theSetup(), List.of(), "lane")) {
            long lines = count(gateway, "log_line");

            assertThat(new Storing(gateway.probe(), Duration.ofSeconds(15)).trouble())
                    .isEmpty();

            assertThat(count(gateway, "log_line")).isEqualTo(lines);
            assertThat(count(gateway, "event")).isZero();
        }
    }

    private static long count(SmallGateway gateway, String table) {
        return gateway.jdbc().queryForObject("select count(*) from " + table, Long.class);
    }
}
