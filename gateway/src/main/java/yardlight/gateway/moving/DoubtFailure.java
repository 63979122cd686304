package yardlight.gateway.moving;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import yardlight.db.moving.MoveInDoubt;

/** Says in words that nobody knows yet whether anything was moved. */
final class DoubtFailure extends AbstractFailureAnalyzer<MoveInDoubt> {

    @Override
    protected FailureAnalysis analyze(Throwable root, MoveInDoubt cause) {
        return new FailureAnalysis(
                "Everything may have been moved, or nothing: " + cause.getMessage(),
                "Start it again in the same way: it says that it was moved in at an earlier start, or moves it in.",
                cause);
    }
}
