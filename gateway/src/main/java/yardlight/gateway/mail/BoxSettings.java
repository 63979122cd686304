package yardlight.gateway.mail;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Timeouts;
import yardlight.channels.mail.MailSettings.Tls;
import yardlight.channels.mailbox.MailboxSettings;
import yardlight.channels.oauth.Tokens;
import yardlight.gateway.settings.SecretText;

/**
 * The mailbox that people answer to, over IMAP. Its text form keeps the password back.
 *
 * @param host none, and what is answered by mail is not heard
 * @param port 993, or 143 without TLS from the first byte, unless given
 * @param tls {@code implicit}, {@code starttls} or {@code none}
 * @param username the sender's address unless given
 * @param certificate SHA-256 of the one certificate that the server must show, for a server that signs its own
 * @param authservId the name under which our own mail server says whether a sender is genuine
 */
@ConfigurationProperties("yardlight.mailbox")
record BoxSettings(
        Optional<String> host,
        Optional<Integer> port,
        @DefaultValue("implicit") String tls,
        Optional<String> username,
        Optional<String> password,
        Optional<String> passwordFile,
        Optional<String> certificate,
        @DefaultValue("INBOX") String folder,
        @DefaultValue("1m") Duration poll,
        Optional<String> authservId) {

    private static final int PORT = 143;
    private static final int TLS_PORT = 993;

    boolean areThere() {
        return host.filter(name -> !name.isBlank()).isPresent();
    }

    /**
     * @param own the address that our mails are from
     * @param tokens for a login without a password
     * @throws IllegalArgumentException in a sentence that begins with the name of the property
     */
    MailboxSettings with(String own, Optional<Tokens> tokens) {
        Tls kind = kind();
        String name = username.filter(given -> !given.isBlank()).orElse(own);
        return new MailboxSettings(
                host.orElseThrow().strip(),
                port.orElse(kind == Tls.IMPLICIT ? TLS_PORT : PORT),
                kind,
                login(name, SecretText.of("password", password, passwordFile), tokens),
                certificate,
                folder,
                own,
                poll,
                authservId.filter(given -> !given.isBlank()),
                Timeouts.USUAL);
    }

    private static Login login(String name, Optional<String> password, Optional<Tokens> tokens) {
        return password.map(given -> new Login(name, given))
                .or(() -> tokens.map(given -> Login.withTokens(name, given)))
                .orElseThrow(() -> new IllegalArgumentException(
                        "password must be set, or password-file, or yardlight.mail.oauth for tokens, for the login of "
                                + name));
    }

    private Tls kind() {
        return switch (tls.toLowerCase(Locale.ROOT)) {
            case "implicit" -> Tls.IMPLICIT;
            case "starttls" -> Tls.STARTTLS;
            case "none" -> Tls.NONE;
            default -> throw new IllegalArgumentException("tls must be implicit, starttls or none: " + tls);
        };
    }

    @Override
    public String toString() {
        return "BoxSettings[" + host.orElse("none") + "]";
    }
}
