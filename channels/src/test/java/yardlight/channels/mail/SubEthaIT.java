package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.subethamail.smtp.RejectException;
import org.subethamail.smtp.auth.EasyAuthenticationHandlerFactory;
import org.subethamail.smtp.auth.LoginFailedException;
import org.subethamail.smtp.server.SMTPServer;
import org.subethamail.smtp.server.Session;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Message;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Tls;

/** Against a second server not written here, which knows STARTTLS. */
class SubEthaIT {

    private static final Message TEXT = new Message(
            "callout-7.2",
            "5755550101@txt.example",
            "MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM.\n.About 1 h 50 to overflow. Reply OK 47",
            Instant.parse("2026-11-25T09:13:00Z"));

    private record Received(String from, String to, boolean tls, String data) {}

    private final List<Received> received = new CopyOnWriteArrayList<>();
    private SMTPServer post;

    private SMTPServer.Builder server() {
        return SMTPServer.port(0)
                .bindAddress(InetAddress.getLoopbackAddress())
                .insertReceivedHeaders(false)
                .messageHandler((context, from, to, data) -> {
                    if (to.startsWith("nobody@")) {
                        throw new RejectException(554, "5.1.1 nobody here");
                    }
                    received.add(new Received(
                            from, to, ((Session) context).isTLSStarted(), new String(data, StandardCharsets.US_ASCII)));
                });
    }

    private SmtpChannel channel(SMTPServer.Builder built, Tls tls, Optional<Login> login) {
        post = built.build();
        post.start();
        Optional<String> certificate = tls == Tls.NONE ? Optional.empty() : Optional.of(Certificates.fingerprint());
        return SmtpChannel.smsMail(Optional.of(Settings.with(post.getPortAllocated(), tls, login, certificate)));
    }

    @AfterEach
    void close() {
        post.stop();
    }

    @Test
    void receives_the_text_and_nothing_but_the_text() {
        try (SmtpChannel channel = channel(server(), Tls.NONE, Optional.empty())) {
            assertThat(channel.send(TEXT).outcome()).isEqualTo(Outcome.ACCEPTED);
        }

        assertThat(received).singleElement().satisfies(mail -> {
            assertThat(mail.from()).isEqualTo("yardlight@ranch.example");
            assertThat(mail.to()).isEqualTo("5755550101@txt.example");
            assertThat(mail.tls()).isFalse();
            Wire wire = Wire.of(mail.data());
            assertThat(wire.body()).isEqualTo(TEXT.text().replace("\n", "\r\n") + "\r\n");
            assertThat(wire.named("Subject")).isEmpty();
        });
    }

    @ParameterizedTest
    @EnumSource(
            value = Tls.class,
            names = {"STARTTLS", "IF_OFFERED"})
    void receives_over_STARTTLS(Tls tls) throws Exception {
        try (SmtpChannel channel = channel(withTls(), tls, Optional.empty())) {
            assertThat(channel.send(TEXT).outcome()).isEqualTo(Outcome.ACCEPTED);
            assertThat(channel.send(TEXT).outcome()).isEqualTo(Outcome.ACCEPTED);
        }

        assertThat(received).hasSize(2).allMatch(Received::tls);
    }

    @Test
    void receives_in_the_clear_from_who_may_when_STARTTLS_is_not_offered() {
        try (SmtpChannel channel = channel(server(), Tls.IF_OFFERED, Optional.empty())) {
            assertThat(channel.send(TEXT).outcome()).isEqualTo(Outcome.ACCEPTED);
        }

        assertThat(received).singleElement().matches(mail -> !mail.tls());
    }

    @Test
    void gets_nothing_over_STARTTLS_with_a_certificate_that_nobody_signed() throws Exception {
        post = withTls().build();
        post.start();
        MailSettings settings =
                Settings.with(post.getPortAllocated(), Tls.STARTTLS, Optional.empty(), Optional.empty());
        try (SmtpChannel channel = SmtpChannel.smsMail(Optional.of(settings))) {
            Attempt attempt = channel.send(TEXT);

            assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
            assertThat(attempt.detail()).startsWith("no TLS with localhost:");
            assertThat(received).isEmpty();
        }
    }

    @Test
    void lets_in_who_has_the_password_and_keeps_out_who_has_not() throws Exception {
        SMTPServer.Builder strict = withTls()
                .requireTLS()
                .requireAuth()
                .authenticationHandlerFactory(new EasyAuthenticationHandlerFactory((user, password, context) -> {
                    if (!user.equals("yard") || !password.equals("fence")) {
                        throw new LoginFailedException();
                    }
                }));
        try (SmtpChannel channel = channel(strict, Tls.STARTTLS, Optional.of(new Login("yard", "fence")))) {
            assertThat(channel.send(TEXT).outcome()).isEqualTo(Outcome.ACCEPTED);
        }
        for (Optional<Login> login : List.of(Optional.of(new Login("yard", "gate")), Optional.<Login>empty())) {
            MailSettings settings = Settings.with(
                    post.getPortAllocated(), Tls.STARTTLS, login, Optional.of(Certificates.fingerprint()));
            try (SmtpChannel channel = SmtpChannel.smsMail(Optional.of(settings))) {
                Attempt attempt = channel.send(TEXT);

                assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
                assertThat(attempt.detail()).contains("53").doesNotContain("gate");
            }
        }

        assertThat(received).hasSize(1);
    }

    @Test
    void says_why_it_does_not_want_a_message() {
        try (SmtpChannel channel = channel(server(), Tls.NONE, Optional.empty())) {
            Attempt attempt = channel.send(new Message("callout-7.2", "nobody@txt.example", "MESA 9", Instant.EPOCH));

            assertThat(attempt.outcome()).isEqualTo(Outcome.REFUSED);
            assertThat(attempt.detail()).isEqualTo("554 5.1.1 nobody here");
        }
    }

    private SMTPServer.Builder withTls() throws GeneralSecurityException, IOException {
        return server().enableTLS().startTlsSocketFactory(Certificates.serverContext());
    }
}
