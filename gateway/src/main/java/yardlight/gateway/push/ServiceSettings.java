package yardlight.gateway.push;

import java.time.Duration;
import java.util.Optional;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import yardlight.channels.push.PushKey;
import yardlight.channels.push.PushSettings;
import yardlight.channels.web.Limits;

/**
 * What push services are told.
 *
 * @param contact where their people can reach the owner, with {@code mailto:} or {@code https://} before it
 * @param life how long they keep a message for a phone that is off
 * @param allowLoopback whether a subscription may lead to this machine, for trying things out
 */
@ConfigurationProperties("yardlight.push")
record ServiceSettings(
        Optional<String> contact,
        @DefaultValue("1h") Duration life,
        @DefaultValue("5s") Duration connectTimeout,
        @DefaultValue("30s") Duration timeout,
        @DefaultValue("false") boolean allowLoopback) {

    boolean areThere() {
        return contact.filter(words -> !words.isBlank()).isPresent();
    }

    PushSettings with(PushKey key, Optional<String> own) {
        return new PushSettings(
                key, contact.orElseThrow(), life, new Limits(connectTimeout, timeout), allowLoopback, own);
    }
}
