package yardlight.escalation.setup;

import java.time.Duration;
import java.util.Optional;

/**
 * A field box that posts for one site.
 *
 * @param feed the power supply that it hangs on
 * @param link the shared path that it talks over
 * @param battery whether it goes on without the mains
 * @param every interval of its heartbeats; empty when it is not expected to send any
 * @param grace how late a heartbeat may be before the box counts as silent
 * @param learned whether that is learned from its heartbeats once there were enough
 * @param signed whether only posts are taken from it that it signed
 */
public record Box(
        String id,
        String site,
        Optional<String> feed,
        Optional<String> link,
        boolean battery,
        Optional<Duration> every,
        Duration grace,
        boolean learned,
        boolean signed) {

    public Box {
        every.ifPresent(interval -> {
            if (interval.isNegative() || interval.isZero()) {
                throw new IllegalArgumentException("heartbeat every must be positive: " + interval);
            }
        });
        if (grace.isNegative()) {
            throw new IllegalArgumentException("heartbeat grace must not be negative: " + grace);
        }
    }

    /** Its key is enough. */
    public Box(
            String id,
            String site,
            Optional<String> feed,
            Optional<String> link,
            boolean battery,
            Optional<Duration> every,
            Duration grace,
            boolean learned) {
        this(id, site, feed, link, battery, every, grace, learned, false);
    }

    /** Its deadline is as it is set up, and its key is enough. */
    public Box(
            String id,
            String site,
            Optional<String> feed,
            Optional<String> link,
            boolean battery,
            Optional<Duration> every,
            Duration grace) {
        this(id, site, feed, link, battery, every, grace, false);
    }
}
