package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.db.TestDatabase;

class PenIT {

    private static final String INSERT = "insert into fruit (name) values (?)";

    @Test
    void stores_no_row_of_a_batch_that_broke_off_between_two_rows() throws SQLException {
        try (Connection connection = TestDatabase.H2.newDataSource().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("create table fruit (name varchar(20))");
            connection.setAutoCommit(false);
            var pen = new Pen(connection, Optional.empty());

            assertThatThrownBy(() -> pen.write(INSERT, List.of("apple", "stone"), (insert, name) -> {
                        if (name.equals("stone")) {
                            throw new IllegalStateException("not a fruit");
                        }
                        insert.setString(1, name);
                    }))
                    .isInstanceOf(IllegalStateException.class);
            assertThat(pen.rollback()).isFalse();
            pen.write(INSERT, List.of("pear"), (insert, name) -> insert.setString(1, name));

            List<String> stored = pen.read("select name from fruit", (none, row) -> {}, row -> row.text("name"));
            assertThat(stored).containsExactly("pear");
        }
    }
}
