package yardlight.gateway.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

/** An interrupt in the middle of a call, on an H2 file: it ends up with the caller and not in the file. */
class UndisturbedIT {

    @Test
    void an_interrupted_caller_leaves_the_file_open_for_everybody_and_is_still_interrupted() throws SQLException {
        boolean interrupted;
        try (var source = TestDatabase.H2.migrated(TestDatabase.H2.newUrl())) {
            try (Connection connection = new Undisturbed(source).getConnection()) {
                Thread.currentThread().interrupt();
                connection
                        .prepareStatement("insert into qrtz_locks values ('yardlight', 'A_LOCK')")
                        .executeUpdate();
                interrupted = Thread.interrupted();
            }

            assertThat(interrupted).isTrue();
            assertThat(new JdbcTemplate(source).queryForObject("select count(*) from qrtz_locks", Long.class))
                    .isEqualTo(1);
        }
    }

    @Test
    void what_the_database_refuses_comes_as_the_database_says_it() throws SQLException {
        try (var source = TestDatabase.H2.migrated(TestDatabase.H2.newUrl());
                Connection connection = new Undisturbed(source).getConnection()) {
            assertThatThrownBy(() -> connection.prepareStatement("select 1 from nowhere"))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("NOWHERE");
        }
    }
}
