package yardlight.gateway.clock;

import java.time.Instant;
import java.util.Optional;

/** When time went on without the gateway. */
@FunctionalInterface
public interface Leap {

    /** For a clock that does not leap. */
    Leap NEVER = Optional::empty;

    /** When the gateway came to itself after the last leap of its clock; empty when there was none since it started. */
    Optional<Instant> last();
}
