package yardlight.gateway.mail;

import java.util.Map;
import java.util.Optional;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import yardlight.channels.mail.MailSettings;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Tls;
import yardlight.channels.oauth.Tokens;

/**
 * The SMTP server, by the names that Spring Boot gives these things.
 *
 * @param properties of these are heeded: {@code mail.smtp.ssl.enable}, {@code mail.smtp.starttls.required} and
 *     {@code mail.smtp.starttls.enable}
 */
@ConfigurationProperties("spring.mail")
record ServerSettings(
        Optional<String> host,
        @DefaultValue("587") int port,
        Optional<String> username,
        Optional<String> password,
        @DefaultValue Map<String, String> properties) {

    private static final int IMPLICIT_TLS_PORT = 465;

    /** A name without a password is shown with a token, if there are any. */
    Optional<Login> login(Optional<Tokens> tokens) {
        Optional<String> given = password.filter(words -> !words.isEmpty());
        return username.map(name -> given.isEmpty() && tokens.isPresent()
                ? Login.withTokens(name, tokens.get())
                : new Login(name, given.orElse("")));
    }

    /** A password never goes over the wire in the clear unless that is asked for in so many words. */
    Tls tls() {
        if (says("mail.smtp.ssl.enable", port == IMPLICIT_TLS_PORT)) {
            return Tls.IMPLICIT;
        }
        if (says("mail.smtp.starttls.required", username.isPresent())) {
            return Tls.STARTTLS;
        }
        return says("mail.smtp.starttls.enable", true) ? Tls.IF_OFFERED : Tls.NONE;
    }

    private boolean says(String property, boolean otherwise) {
        return Boolean.parseBoolean(properties.getOrDefault(property, String.valueOf(otherwise)));
    }

    MailSettings with(String from, SenderSettings sender, Optional<Tokens> tokens) {
        return new MailSettings(
                host.orElseThrow(),
                port,
                tls(),
                login(tokens),
                from,
                MailSettings.Timeouts.USUAL,
                sender.certificate());
    }
}
