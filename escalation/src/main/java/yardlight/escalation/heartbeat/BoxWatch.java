package yardlight.escalation.heartbeat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * What is known of a box.
 *
 * @param heardAt when it last posted anything
 * @param deadline when its silence becomes an alarm; empty while it is silent, or when no heartbeat is expected
 * @param silent whether its silence is an alarm now
 * @param last what it last said of itself
 */
public record BoxWatch(String box, Instant heardAt, Optional<Instant> deadline, boolean silent, Heartbeat last) {

    /**
     * The box after a sign of life. What it did not say this time is as it said last.
     *
     * @param patience how long it may be silent from now on; empty when no heartbeat is expected
     */
    public BoxWatch heard(Instant now, Optional<Duration> patience, Heartbeat said) {
        return new BoxWatch(box, now, patience.map(now::plus), false, said.after(last));
    }

    /** The box once its deadline has passed. */
    public BoxWatch gone() {
        return new BoxWatch(box, heardAt, Optional.empty(), true, last);
    }

    /** The box with another deadline. */
    public BoxWatch with(Optional<Instant> next) {
        return new BoxWatch(box, heardAt, next, silent, last);
    }
}
