package yardlight.gateway.http;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says in words why the gateway does not start with this provider. */
final class HttpFailure extends AbstractFailureAnalyzer<HttpTrouble> {

    @Override
    protected FailureAnalysis analyze(Throwable root, HttpTrouble cause) {
        return new FailureAnalysis(cause.getMessage(), "Change that property: docs/channels.md has them all.", cause);
    }
}
