package yardlight.gateway.home;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.Ordered;
import org.springframework.core.env.Environment;
import yardlight.db.disk.H2File;
import yardlight.db.moving.SchemaVersion;

/**
 * Looks at the home and reads the H2 file in it, before anybody opens it to write: a file that is damaged, or that a newer
 * release has changed, is left as it is to the last byte.
 */
final class HomeCheck implements ApplicationContextInitializer<ConfigurableApplicationContext>, Ordered {

    private static final String READ_ONLY = ";ACCESS_MODE_DATA=r;IFEXISTS=TRUE";
    private static final String NEWEST =
            "select max(cast(\"version\" as integer)) from \"flyway_schema_history\" where \"success\"";

    /** H2's own error codes, as its {@code ErrorCode} documents them; the last two are a table that is not there. */
    private static final int ALREADY_OPEN = 90_020;

    private static final int WRONG_LOGIN = 28_000;
    private static final int NO_TABLE = 42_102;
    private static final int NO_TABLE_AT_ALL = 42_104;

    /** H2 says so of a file in which nothing was ever committed: it would have to begin it. */
    private static final int WANTS_TO_WRITE = 90_097;

    private static final long MOST_BEGUN = 32_768;

    /** After a backup was put in place, if one is. */
    @Override
    public int getOrder() {
        return 10;
    }

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        Environment environment = context.getEnvironment();
        String url = environment.getProperty("spring.datasource.url", "");
        H2File.of(url).ifPresent(home -> {
            writable(home.path().getParent());
            long size = size(home.path());
            if (size > MOST_BEGUN) {
                look(home, home.path(), environment);
            } else if (size > 0) {
                lookAtCopy(home.path(), environment);
            }
        });
    }

    /** What H2 cannot open it keeps open and locked until the collector comes by, and nobody else could open it then. */
    private static void lookAtCopy(Path file, Environment environment) {
        try {
            Path folder = Files.createTempDirectory("yardlight-begun");
            H2File copy = new H2File(folder.resolve("copy"));
            Files.copy(file, copy.path());
            try {
                look(copy, file, environment);
            } finally {
                Files.deleteIfExists(copy.path());
                Files.deleteIfExists(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void writable(Path home) {
        try {
            Files.createDirectories(home);
            Files.delete(Files.createTempFile(home, "may-write", ""));
        } catch (IOException e) {
            throw new HomeTrouble(
                    "The database file cannot be written, nor anything else in yardlight.home: " + e,
                    "Make " + home + " a folder that the user of the gateway may write to, or name another one.",
                    e);
        }
    }

    private static long size(Path file) {
        try {
            return Files.exists(file) ? Files.size(file) : 0;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * @param file what is said to be wrong, if anything is
     */
    private static void look(H2File home, Path file, Environment environment) {
        String user = environment.getProperty("spring.datasource.username", "sa");
        String password = environment.getProperty("spring.datasource.password", "");
        try (Connection connection = DriverManager.getConnection(home.address(READ_ONLY), user, password);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(NEWEST)) {
            rows.next();
            if (rows.getInt(1) > SchemaVersion.newestKnown()) {
                throw new HomeTrouble(
                        "The tables of the database are not those of this release: a newer one has used it. They are of"
                                + " version " + rows.getInt(1) + ", this release knows " + SchemaVersion.newestKnown()
                                + ". Nothing was changed.",
                        "Start the newest release that has used it, or restore a backup from before.",
                        null);
            }
        } catch (SQLException e) {
            refuse(file, e);
        }
    }

    private static void refuse(Path file, SQLException trouble) {
        switch (trouble.getErrorCode()) {
            case NO_TABLE, NO_TABLE_AT_ALL -> {
                // The very first start was killed before it got as far as that.
            }
            case WANTS_TO_WRITE -> {
                if (size(file) > MOST_BEGUN) {
                    throw damaged(file, trouble);
                }
            }
            case ALREADY_OPEN, WRONG_LOGIN -> throw new IllegalStateException(trouble);
            default -> throw damaged(file, trouble);
        }
    }

    private static HomeTrouble damaged(Path file, SQLException trouble) {
        return new HomeTrouble(
                "The database file is damaged or is none, and was not changed: " + file + ": " + trouble.getMessage(),
                "Put the file aside, and restore the newest backup: docs/operating.md says how.",
                trouble);
    }
}
