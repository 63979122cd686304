package yardlight.gateway.dispatch;

import java.time.Duration;
import java.util.Map;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * @param poll the longest time between two looks into the outbox, on the clock on the wall
 * @param workers how many notices go out by one channel at the same time
 * @param takenWithin after which time a text that no carrier took goes on to the next line
 * @param receiptWithin by channel, how long after it took a text its receipt may take; zero, and none is expected
 */
@ConfigurationProperties("yardlight.dispatch")
record DispatchSettings(
        @DefaultValue("250ms") Duration poll,
        @DefaultValue("4") int workers,
        @DefaultValue("30s") Duration takenWithin,
        @DefaultValue Map<String, Duration> receiptWithin) {

    DispatchSettings {
        if (poll.isNegative() || poll.isZero()) {
            throw new IllegalArgumentException("yardlight.dispatch.poll must be more than nothing: " + poll);
        }
        if (takenWithin.isNegative() || takenWithin.isZero()) {
            throw new IllegalArgumentException(
                    "yardlight.dispatch.taken-within must be more than nothing: " + takenWithin);
        }
        if (workers < 1) {
            throw new IllegalArgumentException("yardlight.dispatch.workers must be at least 1: " + workers);
        }
        receiptWithin.forEach((channel, time) -> {
            if (time.isNegative()) {
                throw new IllegalArgumentException(
                        "yardlight.dispatch.receipt-within." + channel + " must not be negative: " + time);
            }
        });
    }
}
