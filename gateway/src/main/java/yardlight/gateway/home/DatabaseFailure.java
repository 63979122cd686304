package yardlight.gateway.home;

import java.sql.SQLException;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says in words why the gateway does not start on a database file that it cannot use. */
final class DatabaseFailure extends AbstractFailureAnalyzer<SQLException> {

    /** H2's own error codes, as its {@code ErrorCode} documents them. */
    private static final int ALREADY_OPEN = 90_020;

    private static final int CORRUPTED = 90_030;

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
            default -> null;
        };
    }
}
