package yardlight.db.moving;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import yardlight.db.TestDatabase;

/** A database of a test, with no connection to it but those that are just in use: so nobody is taken for a gateway. */
record Ground(TestDatabase database, String url) {

    static Ground empty(TestDatabase database) {
        String url = database.newUrl();
        database.migrated(url).close();
        return new Ground(database, url);
    }

    static Ground filled(TestDatabase database, long seed) throws SQLException {
        Ground ground = empty(database);
        try (HikariDataSource pool = database.migrated(ground.url())) {
            new RandomNight(pool, seed).write();
        }
        return ground;
    }

    DataSource source() {
        return new DriverManagerDataSource(url, database.user(), "");
    }

    JdbcTemplate jdbc() {
        return new JdbcTemplate(source());
    }

    Crate moveOut(Path file) {
        return new MoveOut(source()).to(file, RandomNight.BEGAN);
    }

    MoveIn moveIn(Path file) {
        return new MoveIn(source(), file);
    }

    boolean isEmpty() throws SQLException {
        try (var connection = source().getConnection()) {
            return new Content(connection).filled().isEmpty();
        }
    }
}
