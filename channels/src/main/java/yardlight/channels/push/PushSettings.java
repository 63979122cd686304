package yardlight.channels.push;

import java.time.Duration;
import java.util.Optional;
import yardlight.channels.web.Limits;

/**
 * What push services are told, and what they are asked for.
 *
 * @param contact where the people of a push service can reach those of this gateway: {@code mailto:} or {@code https://}
 *     (RFC 8292 2.1)
 * @param life how long a service keeps a message for a phone that is off, 0 s to 28 days
 * @param loopback whether endpoints on this machine are allowed, also without TLS: for trying things out
 * @param own the name under which this gateway is reached from outside; nothing is sent there
 */
public record PushSettings(
        PushKey key, String contact, Duration life, Limits limits, boolean loopback, Optional<String> own) {

    private static final Duration LONGEST = Duration.ofDays(28);

    public PushSettings {
        if (!contact.matches("(mailto:[!-~]+@[!-~]+|https://[!-~]+)")) {
            throw new IllegalArgumentException("contact must begin with mailto: or https://: " + contact);
        }
        if (life.isNegative() || life.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException("life must be from 0 s to 28 days: " + life);
        }
    }

    /** For a gateway that nobody reaches from outside. */
    public PushSettings(PushKey key, String contact, Duration life, Limits limits, boolean loopback) {
        this(key, contact, life, limits, loopback, Optional.empty());
    }
}
