package yardlight.db.disk;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that is written to in very many small commits, as by a lane. */
class PackingIT {

    private static final int COMMITS = 3_000;
    private static final long LITTLE = 1024 * 1024;

    @TempDir
    private Path home;

    private final HikariDataSource source = new HikariDataSource();

    @BeforeEach
    void open() throws SQLException {
        // Nothing is kept for a late disk, so that the test need not wait for it.
        source.setJdbcUrl("jdbc:h2:file:" + home.resolve("many") + ";WRITE_DELAY=0;RETENTION_TIME=0");
        source.setUsername("sa");
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("create table line (number bigint primary key, words varchar(300))");
            statement.execute("create table box (id integer primary key, heard bigint)");
            commit(0, COMMITS);
        }
    }

    @AfterEach
    void close() {
        source.close();
    }

    @Test
    void holds_little_that_is_wanted_until_it_is_packed_and_loses_nothing_by_it() throws SQLException {
        assertThat(fill()).isLessThan(Packing.WANTED);

        pack();
        commit(COMMITS, 1); // what was left empty is let go by the next commit

        assertThat(fill()).isGreaterThanOrEqualTo(Packing.WANTED);
        assertThat(lines()).isEqualTo(COMMITS + 1);
    }

    @Test
    void does_not_grow_by_what_was_freed() throws SQLException, IOException {
        pack();
        long before = size();

        commit(COMMITS, COMMITS / 3);
        pack();
        commit(COMMITS + COMMITS / 3, COMMITS / 3);
        pack();

        // Where H2 lets nothing go (RETENTION_TIME at its default) the same commits add 34 MB. Most often they add
        // nothing, and
        // 0.4 MB have been seen: a chunk that found no hole of its size.
        assertThat(size()).isLessThanOrEqualTo(before + LITTLE);
    }

    @Test
    void is_whole_when_it_is_opened_again() throws SQLException {
        pack();
        source.close();

        try (var again = new HikariDataSource()) {
            again.setJdbcUrl("jdbc:h2:file:" + home.resolve("many"));
            again.setUsername("sa");
            try (Connection connection = again.getConnection()) {
                assertThat(lines(connection)).isEqualTo(COMMITS);
            }
        }
    }

    private void pack() throws SQLException {
        var packing = new Packing(source);
        while (packing.step()) {
            // there may be more
        }
    }

    private void commit(int from, int count) throws SQLException {
        try (Connection connection = source.getConnection();
                PreparedStatement line = connection.prepareStatement("insert into line values (?, ?)");
                PreparedStatement box = connection.prepareStatement("merge into box key (id) values (?, ?)")) {
            for (int number = from; number < from + count; number++) {
                connection.setAutoCommit(false);
                line.setLong(1, number);
                line.setString(2, "mesa-9/water-tank high-high: called ana for the time number " + number);
                line.executeUpdate();
                box.setInt(1, number % 500);
                box.setLong(2, number);
                box.executeUpdate();
                connection.commit();
            }
        }
    }

    private int fill() throws SQLException {
        try (Connection connection = source.getConnection()) {
            return Packing.fill(connection);
        }
    }

    private long lines() throws SQLException {
        try (Connection connection = source.getConnection()) {
            return lines(connection);
        }
    }

    private static long lines(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                var rows = statement.executeQuery("select count(*) from line where words like '%number ' || number")) {
            rows.next();
            return rows.getLong(1);
        }
    }

    private long size() throws IOException {
        return Files.size(home.resolve("many.mv.db"));
    }
}
