package yardlight.gateway.push;

import java.util.Optional;
import yardlight.channels.push.PushSettings;

/** What push is set up with; empty while it is not. */
record PushDesk(Optional<PushSettings> settings) {

    /** The key with which browsers subscribe, in the form that they take. */
    Optional<String> publicKey() {
        return settings.map(set -> set.key().applicationServerKey());
    }
}
