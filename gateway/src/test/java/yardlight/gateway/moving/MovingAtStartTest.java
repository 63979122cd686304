package yardlight.gateway.moving;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.InstantSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import yardlight.db.moving.MoveRefused;

class MovingAtStartTest {

    @Test
    void cannot_move_out_and_in_at_once() {
        var both = new MovingAtStart(new DriverManagerDataSource(), InstantSource.system(), "out.zip", "in.zip");

        assertThatThrownBy(() -> both.migrate(new Flyway(Flyway.configure())))
                .isInstanceOf(MoveRefused.class)
                .hasMessageContaining("are both set");
    }
}
