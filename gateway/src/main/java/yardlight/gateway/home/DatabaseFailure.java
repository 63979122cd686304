package yardlight.gateway.home;

import java.sql.SQLException;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says in words why the gateway does not start on a database that it cannot use. */
final class DatabaseFailure extends AbstractFailureAnalyzer<SQLException> {

    /** H2's own error codes, as its {@code ErrorCode} documents them. */
    private static final int ALREADY_OPEN = 90_020;

    private static final int CORRUPTED = 90_030;
    private static final int FILE_CREATION_FAILED = 90_062;
    private static final int IO = 90_028;
    private static final int IO_WITH_PATH = 90_031;

    @Override
    protected FailureAnalysis analyze(Throwable root, SQLException cause) {
        return switch (cause.getErrorCode()) {
            case ALREADY_OPEN ->
                new FailureAnalysis(
                        "Another program has the database open, most likely another gateway: " + cause.getMessage(),
                        "Stop the other one, or give this one a yardlight.home of its own. Several gateways share a"
                                + " database only on PostgreSQL.",
                        cause);
            case CORRUPTED ->
                new FailureAnalysis(
                        "The database file is damaged: " + cause.getMessage(),
                        "Keep the file for later, and restore the newest backup.",
                        cause);
            case FILE_CREATION_FAILED, IO, IO_WITH_PATH ->
                new FailureAnalysis(
                        "The database file cannot be written: " + cause.getMessage(),
                        "Look at the rights and the free space of the folder that yardlight.home names.",
                        cause);
            default -> byState(cause);
        };
    }

    /** Classes of SQL states that both databases use: 28 for a login that is refused, 08 for a connection that fails. */
    private static FailureAnalysis byState(SQLException cause) {
        String state = cause.getSQLState() == null ? "" : cause.getSQLState();
        if (state.startsWith("28")) {
            return new FailureAnalysis(
                    "The database does not let the gateway in: " + cause.getMessage(),
                    "Correct spring.datasource.username and spring.datasource.password.",
                    cause);
        }
        if (state.startsWith("08")) {
            return new FailureAnalysis(
                    "The database cannot be reached: " + cause.getMessage(),
                    "Start it, or correct spring.datasource.url. The supervisor may go on trying.",
                    cause);
        }
        return null;
    }
}
