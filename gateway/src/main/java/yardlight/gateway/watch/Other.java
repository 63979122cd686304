package yardlight.gateway.watch;

import java.time.Duration;
import java.util.Optional;

/** The other gateway's ear. */
@FunctionalInterface
interface Other {

    /**
     * Says that all is well here.
     *
     * @param uptime of this gateway, whole seconds count
     */
    Told tell(Duration uptime);

    /**
     * What came of it.
     *
     * @param next after which time the other one expects to hear again; empty if it did not say, or did not hear
     * @param trouble why it did not hear, in a few words
     */
    record Told(Optional<Duration> next, Optional<String> trouble) {

        static Told heard(Optional<Duration> next) {
            return new Told(next, Optional.empty());
        }

        static Told unheard(String why) {
            return new Told(Optional.empty(), Optional.of(why));
        }
    }
}
