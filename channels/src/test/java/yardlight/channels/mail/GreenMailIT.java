package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Health;
import yardlight.channels.Message;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Tls;

/** Against a server not written here: in the clear, with TLS from the first byte, and with a login. */
class GreenMailIT {

    private static final Instant AT = Instant.parse("2026-11-25T09:13:00Z");
    private static final Message SPANISH = new Message(
            "callout-7.2",
            "ana@example.org",
            "MESA 9 TANQUE DE AGUA ALTO 18.4 ft. Válvula ¿abierta? Conteste OK 47",
            AT);

    private GreenMail post;

    @BeforeEach
    void open() {
        post = new GreenMail(new ServerSetup[] {
            new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP),
            new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTPS)
        });
        post.start();
        post.setUser("yard@ranch.example", "yard", "pass word:ñ");
    }

    @AfterEach
    void close() {
        post.stop();
    }

    private Attempt send(MailSettings settings) {
        try (SmtpChannel channel = SmtpChannel.mail(Optional.of(settings))) {
            return channel.send(SPANISH);
        }
    }

    @Test
    void receives_what_was_sent() throws Exception {
        Attempt attempt = send(Settings.plain(post.getSmtp().getPort()));

        assertThat(attempt.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(post.getReceivedMessages()).hasSize(1);
        MimeMessage mail = post.getReceivedMessages()[0];
        assertThat(mail.getFrom()).containsExactly(new InternetAddress("yardlight@ranch.example"));
        assertThat(mail.getAllRecipients()).containsExactly(new InternetAddress("ana@example.org"));
        assertThat(mail.getSubject()).isEqualTo("MESA 9 TANQUE DE AGUA ALTO 18.4 ft. Válvula ¿abierta?");
        assertThat(mail.getMessageID()).isEqualTo("<callout-7%2E2@ranch.example>");
        assertThat(mail.getSentDate()).isEqualTo(Date.from(AT));
        assertThat(mail.getHeader("Auto-Submitted")).containsExactly("auto-generated");
        assertThat((String) mail.getContent()).startsWith(SPANISH.text());
    }

    @Test
    void receives_with_TLS_from_the_first_byte_and_the_certificate_that_we_expect() {
        Attempt attempt = send(implicit(Optional.empty(), Optional.of(Certificates.fingerprint())));

        assertThat(attempt.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(post.getReceivedMessages()).hasSize(1);
    }

    @Test
    void gets_nothing_with_a_certificate_that_nobody_signed() {
        Attempt attempt = send(implicit(Optional.empty(), Optional.empty()));

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.detail()).startsWith("no TLS with localhost:");
        assertThat(post.getReceivedMessages()).isEmpty();
    }

    @Test
    void gets_nothing_with_another_certificate_than_the_one_that_we_expect() {
        Attempt attempt = send(implicit(Optional.empty(), Optional.of("0".repeat(64))));

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.detail()).contains("another certificate, SHA-256 " + Certificates.fingerprint());
        assertThat(post.getReceivedMessages()).isEmpty();
    }

    @Test
    void lets_in_who_has_the_password() {
        Attempt attempt =
                send(implicit(Optional.of(new Login("yard", "pass word:ñ")), Optional.of(Certificates.fingerprint())));

        assertThat(attempt.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(post.getReceivedMessages()).hasSize(1);
    }

    @Test
    void keeps_out_who_has_not_and_the_message_waits() {
        MailSettings wrong =
                implicit(Optional.of(new Login("yard", "hunter2")), Optional.of(Certificates.fingerprint()));
        try (SmtpChannel channel = SmtpChannel.mail(Optional.of(wrong))) {
            Attempt attempt = channel.send(SPANISH);

            assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
            assertThat(attempt.detail())
                    .startsWith("the login was not taken: 535")
                    .doesNotContain("hunter2");
            assertThat(channel.health().state()).isEqualTo(Health.State.TROUBLED);
            assertThat(channel.health().sentence()).contains("the login was not taken: 535");
            assertThat(post.getReceivedMessages()).isEmpty();
        }
    }

    private MailSettings implicit(Optional<Login> login, Optional<String> certificate) {
        return Settings.with(post.getSmtps().getPort(), Tls.IMPLICIT, login, certificate);
    }
}
