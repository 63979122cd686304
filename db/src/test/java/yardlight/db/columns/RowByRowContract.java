package yardlight.db.columns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

/** Long answers are read in parts, on every database. */
abstract class RowByRowContract {

    abstract TestDatabase database();

    /** The two things without which PostgreSQL's driver reads everything first. */
    @Test
    void rows_come_in_parts_and_in_a_transaction() {
        var found = new ArrayList<Integer>();

        RowByRow.each(
                new JdbcTemplate(database().newDataSource()),
                "select x from (values (1), (2), (3)) as numbers(x) where x > ? order by x",
                rows -> {
                    assertThat(rows.getStatement().getFetchSize()).isEqualTo(RowByRow.AT_ONCE);
                    assertThat(rows.getStatement().getConnection().getAutoCommit())
                            .isFalse();
                    found.add(rows.getInt("x"));
                },
                1);

        assertThat(found).containsExactly(2, 3);
    }
}
