package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Health;
import yardlight.channels.Message;
import yardlight.channels.mail.MailSettings.Timeouts;
import yardlight.channels.mail.MailSettings.Tls;
import yardlight.channels.mail.ScriptedServer.After;

/** Servers that hang up, hang on, or are not there. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SmtpTroubleIT {

    private static final Timeouts SHORT =
            new Timeouts(Duration.ofSeconds(2), Duration.ofMillis(800), Duration.ofMillis(1_500));

    /** So that on a machine under load, too, the time is up at the step that is meant and at none before. */
    private static final Timeouts LONGER =
            new Timeouts(Duration.ofSeconds(5), Duration.ofSeconds(2), Duration.ofSeconds(4));

    private ScriptedServer server;
    private SmtpChannel channel;

    @BeforeEach
    void open() throws IOException {
        server = new ScriptedServer();
        channel = SmtpChannel.mail(Optional.of(Settings.with(server.port(), SHORT)));
    }

    @AfterEach
    void close() throws IOException {
        channel.close();
        server.close();
    }

    private static Message message(String text) {
        return new Message("callout-7.2", "ana@example.org", text, Instant.EPOCH);
    }

    private Attempt send() {
        return channel.send(message("MESA 9"));
    }

    @ParameterizedTest
    @CsvSource({
        "GREETING, HANG_UP", "EHLO, HANG_UP", "MAIL, HANG_UP", "RCPT, HANG_UP", "DATA, HANG_UP",
        "GREETING, RESET", "EHLO, RESET", "MAIL, RESET", "RCPT, RESET", "DATA, RESET",
        "GREETING, SILENCE", "EHLO, SILENCE", "MAIL, SILENCE", "RCPT, SILENCE", "DATA, SILENCE",
        "GREETING, DRIP", "EHLO, DRIP", "MAIL, DRIP", "RCPT, DRIP", "DATA, DRIP"
    })
    void before_the_text_was_sent_it_waits(String command, After what) {
        server.does(command, "", what);

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.detail()).isNotBlank();
        assertThat(server.mails).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = After.class,
            names = {"HANG_UP", "RESET", "SILENCE", "DRIP"})
    void after_the_end_of_the_text_nobody_knows(After what) {
        channel.close();
        channel = SmtpChannel.mail(Optional.of(Settings.with(server.port(), LONGER)));
        server.does(".", "", what);

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(attempt.detail()).startsWith("sent, but not confirmed");
        assertThat(channel.health().state()).isEqualTo(Health.State.TROUBLED);
        assertThat(server.mails).hasSize(1);
    }

    @Test
    void a_text_that_was_cut_in_the_middle_waits() {
        server.does("DATA", "354 go on", After.RESET);

        Attempt attempt = channel.send(message("long line\n".repeat(3_000_000)));

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
    }

    @Test
    void a_server_that_does_not_read_the_text_is_given_up() {
        server.does("DATA", "354 go on", After.SILENCE);

        Attempt attempt = channel.send(message("long line\n".repeat(3_000_000)));

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.detail()).contains("given up").contains("1500 ms");
    }

    @ParameterizedTest
    @ValueSource(strings = {"GREETING", "RCPT", "."})
    @Timeout(value = 10, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void a_server_that_drips_is_given_up_in_time(String command) {
        server.does(command, "", After.DRIP);
        long start = System.nanoTime();

        Attempt attempt = send();

        assertThat(attempt.detail()).contains("given up").contains("1500 ms");
        assertThat(Duration.ofNanos(System.nanoTime() - start))
                .isBetween(Duration.ofMillis(1_400), Duration.ofSeconds(6));
    }

    @ParameterizedTest
    @CsvSource({
        "GREETING, 421 4.3.2 busy, HANG_UP", "EHLO, 421 4.3.2 busy, HANG_UP", "MAIL, 421 4.3.2 busy, HANG_UP",
        "RCPT, 421 4.3.2 busy, HANG_UP", "DATA, 421 4.3.2 busy, HANG_UP", "MAIL, 550 5.7.1 blocked, STAY",
        "RCPT, 530 5.7.0 login first, STAY", "GREETING, '', SILENCE", ".,'', HANG_UP"
    })
    void what_every_message_would_meet_is_told_from_what_is_about_the_line(String command, String words, After after) {
        server.does(command, words, after);

        assertThat(send().general()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"RCPT, 450 4.2.0 grey", "RCPT, 552 5.2.2 full", "RCPT, 550 5.1.1 no", "DATA, 451 4.3.0 later"})
    void what_is_about_the_line_is_not_held_against_the_carrier(String command, String words) {
        server.says(command, words);

        assertThat(send().general()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"GREETING, SILENCE", "EHLO, DRIP", "GREETING, HANG_UP"})
    @Timeout(value = 10, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void a_knock_ends_in_time_too(String command, After what) {
        server.does(command, "", what);

        assertThat(channel.knock()).isPresent();
        assertThat(server.mails).isEmpty();
    }

    @Test
    void nobody_at_home_waits_and_the_owner_is_told() throws IOException {
        int port;
        try (ServerSocket closed = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = closed.getLocalPort();
        }
        try (SmtpChannel none = SmtpChannel.mail(Optional.of(Settings.with(port, SHORT)))) {
            Attempt attempt = none.send(message("MESA 9"));

            assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
            assertThat(attempt.detail()).startsWith("localhost:" + port + " cannot be reached");
            assertThat(none.health().state()).isEqualTo(Health.State.TROUBLED);
            assertThat(none.health().sentence()).contains("localhost:" + port);
        }
    }

    @Test
    void a_host_that_nobody_knows_waits() {
        MailSettings settings = MailSettings.of("no-such-host.invalid", 25, Tls.NONE, Settings.FROM);
        try (SmtpChannel none = SmtpChannel.mail(Optional.of(settings))) {
            Attempt attempt = none.send(message("MESA 9"));

            assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
            assertThat(attempt.detail()).isEqualTo("no host is known as no-such-host.invalid");
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Tls.class,
            names = {"STARTTLS", "IMPLICIT"})
    void nothing_is_sent_without_the_TLS_that_is_required(Tls tls) {
        MailSettings settings = new MailSettings(
                "localhost", server.port(), tls, Optional.empty(), Settings.FROM, SHORT, Optional.empty());
        try (SmtpChannel strict = SmtpChannel.mail(Optional.of(settings))) {
            Attempt attempt = strict.send(message("MESA 9"));

            assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
            assertThat(attempt.detail()).contains("TLS");
            assertThat(server.commands).noneMatch(command -> command.startsWith("MAIL"));
        }
    }
}
