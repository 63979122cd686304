package yardlight.gateway.due;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * @param poll the longest time between two looks, on the clock on the wall; up to 250 ms, so that a rung is never late
 */
@ConfigurationProperties("yardlight.due")
record DueSettings(@DefaultValue("100ms") Duration poll) {

    private static final Duration LONGEST = Duration.ofMillis(250);

    DueSettings {
        if (poll.isNegative() || poll.isZero() || poll.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(
                    "yardlight.due.poll must be more than nothing and at most 250ms: " + poll);
        }
    }
}
