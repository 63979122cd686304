package yardlight.demo.outside;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/** The two databases as an operator would run them: with every sync that they can do. */
enum Store {
    H2,
    POSTGRESQL;

    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static EmbeddedPostgres server;

    /** What tells a gateway to use a new and empty one; H2 makes its own in the gateway's home. */
    Map<String, String> anew() throws IOException, SQLException {
        return switch (this) {
            case H2 -> Map.of();
            case POSTGRESQL -> {
                String name = "outside" + NUMBER.incrementAndGet();
                run("create database " + name);
                yield Map.of(
                        "spring.datasource.url",
                        server().getJdbcUrl("postgres", name),
                        "spring.datasource.username",
                        "postgres");
            }
        };
    }

    /** Where PostgreSQL listens on this machine. */
    static int port() throws IOException {
        return server().getPort();
    }

    /** The answers of PostgreSQL, one for each row. */
    static List<String> ask(String sql) throws IOException, SQLException {
        return ask(server().getPostgresDatabase().getConnection(), sql);
    }

    /**
     * The same from the database of a gateway.
     *
     * @param store what {@link #anew} gave
     */
    static List<String> ask(Map<String, String> store, String sql) throws SQLException {
        return ask(DriverManager.getConnection(store.get("spring.datasource.url")), sql);
    }

    private static List<String> ask(Connection asked, String sql) throws SQLException {
        try (var connection = asked;
                var statement = connection.createStatement();
                var rows = statement.executeQuery(sql)) {
            var answers = new ArrayList<String>();
            while (rows.next()) {
                answers.add(rows.getString(1));
            }
            return answers;
        }
    }

    private static void run(String sql) throws IOException, SQLException {
        try (var connection = server().getPostgresDatabase().getConnection();
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    /** Ends with the virtual machine. For tests it would come with its syncs switched off. */
    private static synchronized EmbeddedPostgres server() throws IOException {
        if (server == null) {
            server = EmbeddedPostgres.builder()
                    .setServerConfig("fsync", "on")
                    .setServerConfig("full_page_writes", "on")
                    .setServerConfig("synchronous_commit", "on")
                    .start();
        }
        return server;
    }
}
