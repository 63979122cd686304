package yardlight.gateway.moving;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.InstantSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import yardlight.db.moving.MoveRefused;

class MovingAtStartTest {

    private static final DriverManagerDataSource EMPTY = new DriverManagerDataSource("jdbc:h2:mem:moving", "sa", "");

    @Test
    void cannot_move_out_and_in_at_once() {
        var both = new MovingAtStart(new DriverManagerDataSource(), InstantSource.system(), "out.zip", "in.zip");

        assertThatThrownBy(() -> both.migrate(new Flyway(Flyway.configure())))
                .isInstanceOf(MoveRefused.class)
                .hasMessageContaining("are both set");
    }

    @Test
    void says_of_which_file_it_speaks_and_where_that_was_asked_for() {
        var out = new MovingAtStart(EMPTY, InstantSource.system(), "out.zip", "");
        var in = new MovingAtStart(EMPTY, InstantSource.system(), "", "gone/in.zip");

        assertThatThrownBy(() -> out.migrate(new Flyway(Flyway.configure())))
                .isInstanceOf(MoveRefused.class)
                .hasMessageStartingWith("yardlight.move-out-to=out.zip: there is nothing in this database");
        assertThatThrownBy(() -> in.migrate(new Flyway(Flyway.configure())))
                .isInstanceOf(MoveRefused.class)
                .hasMessage("yardlight.move-in-from=gone/in.zip: it is not there");
    }
}
