package yardlight.gateway.moving;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import yardlight.db.moving.MoveRefused;

/** Says in words why nothing was moved. */
final class MoveFailure extends AbstractFailureAnalyzer<MoveRefused> {

    @Override
    protected FailureAnalysis analyze(Throwable root, MoveRefused cause) {
        return new FailureAnalysis(
                "Nothing was moved, and nothing was changed: " + cause.getMessage(),
                "docs/operating.md says how a gateway moves. Leave " + MovingAtStart.OUT + " and " + MovingAtStart.IN
                        + " out to start on what is there.",
                cause);
    }
}
