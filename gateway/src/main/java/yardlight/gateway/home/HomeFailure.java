package yardlight.gateway.home;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says in words why the gateway does not start in this home. */
final class HomeFailure extends AbstractFailureAnalyzer<HomeTrouble> {

    @Override
    protected FailureAnalysis analyze(Throwable root, HomeTrouble cause) {
        return new FailureAnalysis(cause.getMessage(), cause.action(), cause);
    }
}
