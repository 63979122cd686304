package yardlight.channels.mail;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import yardlight.channels.oauth.NoToken;
import yardlight.channels.oauth.Tokens;

/**
 * Which SMTP server takes our mail, and how we speak to it.
 *
 * @param host name or IP address
 * @param port 1 to 65535; 587 is usual with {@link Tls#STARTTLS}, 465 with {@link Tls#IMPLICIT}
 * @param from the sender, one plain address such as {@code yardlight@ranch.example}
 * @param certificate SHA-256 of the one certificate that the server must show, 64 hexadecimal digits with or without
 *     colons: for a server that signs its own. Empty: a certificate in the server's name from an authority that this
 *     machine trusts
 */
public record MailSettings(
        String host,
        int port,
        Tls tls,
        Optional<Login> login,
        String from,
        Timeouts timeouts,
        Optional<String> certificate) {

    /** How the connection is kept private. */
    public enum Tls {
        /** Not at all: only for a server on the same machine or wire. */
        NONE,
        /** STARTTLS if the server offers it. Somebody on the way can take the offer out. */
        IF_OFFERED,
        /** STARTTLS, and nothing is sent without it. */
        STARTTLS,
        /** TLS from the first byte. */
        IMPLICIT
    }

    public MailSettings {
        if (host.isBlank() || host.chars().anyMatch(c -> c <= ' ' || c > '~')) {
            throw new IllegalArgumentException("mail host must be a name or an IP address: " + host);
        }
        if (port < 1 || port > 65_535) {
            throw new IllegalArgumentException("mail port must be 1 to 65535: " + port);
        }
        MailAddress.complaintAbout(from).ifPresent(complaint -> {
            throw new IllegalArgumentException("mail sender is " + complaint);
        });
        certificate = certificate.map(MailSettings::fingerprint);
    }

    /** Without login and with the usual timeouts. */
    public static MailSettings of(String host, int port, Tls tls, String from) {
        return new MailSettings(host, port, tls, Optional.empty(), from, Timeouts.USUAL, Optional.empty());
    }

    String server() {
        return host + ":" + port;
    }

    private static String fingerprint(String given) {
        String digits = given.replace(":", "").toLowerCase(Locale.ROOT);
        if (!digits.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("mail certificate must be a SHA-256 of 64 hexadecimal digits: " + given);
        }
        return digits;
    }

    /**
     * Who we are to the server. Its text form keeps the password back.
     *
     * @param password empty if there are tokens
     * @param tokens if the server wants one of OAuth 2.0 in place of a password
     */
    public record Login(String username, String password, Optional<Tokens> tokens) {

        public Login(String username, String password) {
            this(username, password, Optional.empty());
        }

        public static Login withTokens(String username, Tokens tokens) {
            return new Login(username, "", Optional.of(tokens));
        }

        public Login {
            if (username.isEmpty() || password.isEmpty() == tokens.isEmpty()) {
                throw new IllegalArgumentException(
                        "mail login must have a username and a password or tokens: " + username);
            }
        }

        /** The password, or a token that is good for now; blocks if it has to be got. */
        public String secret() throws NoToken {
            return tokens.isPresent() ? tokens.get().token() : password;
        }

        @Override
        public String toString() {
            return "Login[" + username + "]";
        }
    }

    /**
     * How long we wait. RFC 5321 4.5.3.2 allows minutes for each step; an alarm cannot, its ladder has a clock of its own.
     *
     * @param connect for the connection
     * @param reply for each answer of the server
     * @param whole for everything that one message takes: a free connection, connecting, and all steps together
     */
    public record Timeouts(Duration connect, Duration reply, Duration whole) {

        public static final Timeouts USUAL =
                new Timeouts(Duration.ofSeconds(5), Duration.ofSeconds(20), Duration.ofSeconds(60));

        public Timeouts {
            check("connect", connect);
            check("reply", reply);
            check("whole", whole);
        }

        private static void check(String what, Duration length) {
            if (length.toMillis() < 1 || length.compareTo(Duration.ofHours(1)) > 0) {
                throw new IllegalArgumentException("mail timeout " + what + " must be from 1 ms to 1 hour: " + length);
            }
        }
    }
}
