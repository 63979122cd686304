package yardlight.gateway.mail;

import java.util.Optional;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * Who our mail is from.
 *
 * @param from one plain address
 * @param certificate SHA-256 of the one certificate that the server must show, for a server that signs its own
 */
@ConfigurationProperties("yardlight.mail")
record SenderSettings(Optional<String> from, Optional<String> certificate) {}
