package yardlight.gateway.settings;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says in words why the gateway does not start with these properties. */
final class SettingsFailure extends AbstractFailureAnalyzer<SettingsTrouble> {

    @Override
    protected FailureAnalysis analyze(Throwable root, SettingsTrouble cause) {
        return new FailureAnalysis(
                cause.getMessage(), "Change that property: " + cause.page() + " has them all.", cause);
    }
}
