package yardlight.db.disk;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;

/** The two databases, and what has to be said to each so that a commit is on disk and a writer never hangs. */
public enum Vendor {
    /**
     * With {@code WRITE_DELAY} 0 a commit survives the death of the process, and {@code CHECKPOINT SYNC} after it makes it
     * survive a power cut. Plain {@code CHECKPOINT} does not sync. See docs/decisions/h2.md.
     */
    H2(Optional.of("checkpoint sync"), List.of("set write_delay 0", "set lock_timeout 5000")),
    /** A commit is on disk when it returns. A writer that stopped in mid-transaction is cut off, so that others go on. */
    POSTGRESQL(
            Optional.empty(),
            List.of(
                    "set synchronous_commit = on",
                    "set lock_timeout = '5s'",
                    "set idle_in_transaction_session_timeout = '10s'"));

    private final Optional<String> syncStatement;
    private final List<String> writerStatements;

    Vendor(Optional<String> syncStatement, List<String> writerStatements) {
        this.syncStatement = syncStatement;
        this.writerStatements = writerStatements;
    }

    /** What is to be run after a commit before anybody is told that it is kept. */
    public Optional<String> syncStatement() {
        return syncStatement;
    }

    /** What is to be run on the connection of a writer before its first transaction. */
    public List<String> writerStatements() {
        return writerStatements;
    }

    public static Vendor of(DataSource source) {
        try (Connection connection = source.getConnection()) {
            String name = connection.getMetaData().getDatabaseProductName();
            return switch (name) {
                case "H2" -> H2;
                case "PostgreSQL" -> POSTGRESQL;
                default -> throw new IllegalArgumentException("database must be H2 or PostgreSQL: " + name);
            };
        } catch (SQLException e) {
            throw new IllegalStateException("the database does not answer: " + e.getMessage(), e);
        }
    }
}
