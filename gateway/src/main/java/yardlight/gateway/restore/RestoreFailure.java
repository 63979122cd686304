package yardlight.gateway.restore;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import yardlight.db.backup.RestoreRefused;

/** Says in words why a backup was not put in place. */
final class RestoreFailure extends AbstractFailureAnalyzer<RestoreRefused> {

    @Override
    protected FailureAnalysis analyze(Throwable root, RestoreRefused cause) {
        return new FailureAnalysis(
                "Nothing was restored, and nothing was changed: " + cause.getMessage(),
                "Name another backup in yardlight.restore-from, or leave the property out to start on what is there.",
                cause);
    }
}
