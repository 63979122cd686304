package yardlight.db;

import com.zaxxer.hikari.HikariDataSource;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/** An empty database for a test, migrated as the gateway would do it. */
public enum TestDatabase {
    H2,
    POSTGRESQL;

    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static EmbeddedPostgres server;

    /** The address of a new database without any table. */
    public String newUrl() {
        return switch (this) {
            case H2 -> "jdbc:h2:file:" + newFolder().resolve("yardlight") + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
            case POSTGRESQL -> newPostgres();
        };
    }

    public DataSource newDataSource() {
        return migrated(newUrl());
    }

    /** A table of the numbers from 1 on, in a column n. */
    public String numbers(long count) {
        return this == H2
                ? "(select x as n from system_range(1, " + count + "))"
                : "generate_series(1, " + count + ") as numbers(n)";
    }

    public String user() {
        return this == H2 ? "sa" : "postgres";
    }

    public HikariDataSource migrated(String url) {
        var source = new HikariDataSource();
        source.setJdbcUrl(url);
        source.setUsername(user());
        source.setMaximumPoolSize(4);
        source.setMinimumIdle(0);
        source.setIdleTimeout(10_000);
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration/common", "classpath:db/migration/" + vendor())
                .load()
                .migrate();
        return source;
    }

    private String vendor() {
        return this == H2 ? "h2" : "postgresql";
    }

    private static Path newFolder() {
        try {
            return Files.createTempDirectory(Path.of("target").toAbsolutePath(), "database");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static synchronized String newPostgres() {
        try {
            if (server == null) {
                server = EmbeddedPostgres.builder()
                        .setServerConfig("fsync", "off")
                        .start();
            }
            String name = "yardlight" + NUMBER.incrementAndGet();
            try (var connection = server.getPostgresDatabase().getConnection();
                    var statement = connection.createStatement()) {
                statement.execute("create database " + name);
            }
            return server.getJdbcUrl("postgres", name) + "&reWriteBatchedInserts=true";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
