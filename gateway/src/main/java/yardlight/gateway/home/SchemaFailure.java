package yardlight.gateway.home;

import org.flywaydb.core.api.exception.FlywayValidateException;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says in words why the gateway does not start on a database that another release has changed. */
final class SchemaFailure extends AbstractFailureAnalyzer<FlywayValidateException> {

    @Override
    protected FailureAnalysis analyze(Throwable root, FlywayValidateException cause) {
        return new FailureAnalysis(
                "The tables of the database are not those of this release. Either a newer release of Yardlight has"
                        + " used it, or somebody has changed it by hand. Nothing was changed now.\n\n"
                        + cause.getMessage(),
                "Start the newest release that has used this database, or restore a backup from before.",
                cause);
    }
}
