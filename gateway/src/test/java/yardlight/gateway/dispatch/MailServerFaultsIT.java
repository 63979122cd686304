package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.mail.MailSettings;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Timeouts;
import yardlight.channels.mail.MailSettings.Tls;
import yardlight.channels.mail.ScriptedServer;
import yardlight.channels.mail.ScriptedServer.After;
import yardlight.channels.mail.SmtpChannel;
import yardlight.db.TestDatabase;

/** Texts go by a mail server on bare sockets that misbehaves, e-mail by one that does not: what people get all the same. */
class MailServerFaultsIT extends DispatchStage {

    private static final Duration LONG = Duration.ofSeconds(40);
    private static final Timeouts SHORT =
            new Timeouts(Duration.ofSeconds(2), Duration.ofMillis(800), Duration.ofMillis(1_500));

    private ScriptedServer server;
    private double speed = 20;

    @Override
    TestDatabase database() {
        return TestDatabase.H2;
    }

    @Override
    double speed() {
        return speed;
    }

    @BeforeEach
    void open() throws IOException {
        server = new ScriptedServer();
    }

    @AfterEach
    void close() throws IOException {
        server.close();
    }

    @Test
    void a_server_that_refuses_connections_is_told_of_and_texts_go_by_the_other_line() throws IOException {
        server.close();

        goesByMailAndIsToldOf("cannot be reached");
    }

    @Test
    void a_server_that_says_421_is_told_of_and_texts_go_by_the_other_line() {
        server.does("GREETING", "421 4.3.2 too busy", After.HANG_UP);

        goesByMailAndIsToldOf("421 4.3.2 too busy");
    }

    @Test
    void a_server_that_accepts_and_says_nothing_is_told_of_and_texts_go_by_the_other_line() {
        server.does("GREETING", "", After.SILENCE);

        goesByMailAndIsToldOf("Read timed out");
    }

    @Test
    void a_server_that_does_not_take_the_password_is_told_of_and_texts_go_by_the_other_line() {
        server.says("EHLO", "250-scripted.example\r\n250 AUTH LOGIN PLAIN").says("AUTH", "535 5.7.8 no");

        goesByMailAndIsToldOf("535 5.7.8 no");
    }

    @Test
    void a_server_that_cuts_after_the_text_gets_it_once_more_under_the_same_id_and_then_the_other_line_does() {
        server.does(".", "", After.HANG_UP);
        startWith(smsMail());

        alarm();

        await().atMost(LONG).until(() -> mail.taken().size() == 1);
        await().untilAsserted(() -> assertThat(noticeStates()).containsExactly("handed-over"));
        assertThat(server.mails).hasSize(2);
        assertThat(messageIds()).hasSize(2).allMatch(messageIds().get(0)::equals);
        assertThat(attempts()).hasSize(3).last().isEqualTo("mail accepted taken");
    }

    @ParameterizedTest
    @ValueSource(strings = {"552 5.2.2 mailbox full", "550 5.1.1 no such number"})
    void what_is_refused_for_good_is_left_for_the_next_line_at_once(String words) {
        server.says("RCPT", words);
        startWith(smsMail());

        alarm();

        await().atMost(LONG).until(() -> mail.taken().size() == 1);
        await().untilAsserted(() -> assertThat(noticeStates()).containsExactly("handed-over"));
        assertThat(attempts()).containsExactly("sms-mail refused " + words, "mail accepted taken");
        assertThat(count("alarm where site = 'gateway'")).isZero();
        assertThat(server.mails).isEmpty();
    }

    @Test
    void after_an_hour_without_a_server_one_text_goes_out_about_what_is_still_open() throws IOException {
        speed = 300;
        try (var mailServer = new ScriptedServer()) {
            for (ScriptedServer each : List.of(server, mailServer)) {
                each.does("GREETING", "421 4.3.2 too busy", After.HANG_UP);
            }
            start(smsMail(), SmtpChannel.mail(Optional.of(settings(mailServer, Optional.empty()))));
            List.of("heater", "separator", "water-tank").forEach(this::alarm);
            await().atMost(LONG).until(() -> count("callout where site = 'mesa-9' and kind = 'held'") == 3);
            await().atMost(LONG).until(() -> count("outbox") == 0);
            int before = server.connections.get() + mailServer.connections.get();
            await().pollDelay(Duration.ofSeconds(12)).atMost(LONG).until(() -> true);
            int knocks = server.connections.get() + mailServer.connections.get() - before;

            // Not both at once: the text goes by the carrier that is back.
            server.says("GREETING", "220 scripted.example ready");

            await().atMost(LONG).until(() -> !server.mails.isEmpty());
            assertThat(server.mails.get(0).to()).contains("5755550101@txt.example");
            assertThat(server.mails.get(0).text()).contains("3 alarms", "HEATER", "SEPARATOR", "WATER TANK");
            assertThat(mailServer.mails).isEmpty();
            assertThat(knocks).isBetween(30, 150);
            assertThat(count("alarm where site = 'gateway' and occurrence > 1")).isZero();
        }
    }

    private void goesByMailAndIsToldOf(String words) {
        startWith(smsMail());

        alarm();

        await().atMost(LONG).until(() -> said("MESA 9 WATER TANK") == 1);
        await().atMost(LONG).until(() -> said("GATEWAY SMS-MAIL DOWN") == 1);
        assertThat(count("attempt where channel = 'sms-mail'")).isBetween(1L, (long) Circuit.MOST_FAILURES);
        assertThat(count("log_line where what = 'carrier' and words like 'carrier sms-mail is down:%" + words + "%'"))
                .isEqualTo(1);
        assertThat(server.mails).isEmpty();
    }

    private void startWith(SmtpChannel smsMail) {
        start(smsMail, mail);
    }

    private SmtpChannel smsMail() {
        return SmtpChannel.smsMail(Optional.of(settings(server, Optional.of(new Login("yard", "wrong")))));
    }

    private static MailSettings settings(ScriptedServer at, Optional<Login> login) {
        return new MailSettings("localhost", at.port(), Tls.NONE, login, "yard@yard.example", SHORT, Optional.empty());
    }

    private List<String> messageIds() {
        return server.mails.stream()
                .flatMap(one -> one.text().lines().filter(line -> line.startsWith("Message-ID:")))
                .toList();
    }

    private long said(String words) {
        return mail.taken().stream()
                .filter(message -> message.text().startsWith(words))
                .count();
    }
}
