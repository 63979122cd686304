package yardlight.gateway.dispatch;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import yardlight.channels.Attempt;

/**
 * Which channels say later what became of a message that they took, and how long that may take. That the other side has a
 * name for the message says nothing: a mail has one too, and no more is heard of it.
 *
 * @param within by channel; none, or zero, where nothing is expected
 */
record ReceiptTimes(Map<String, Duration> within) {

    static final ReceiptTimes NONE = new ReceiptTimes(Map.of());

    /** How long to wait for the receipt of this attempt; a message without a name cannot get one. */
    Optional<Duration> of(String channel, Attempt attempt) {
        return attempt.reference()
                .flatMap(name -> Optional.ofNullable(within.get(channel)))
                .filter(time -> !time.isZero());
    }
}
