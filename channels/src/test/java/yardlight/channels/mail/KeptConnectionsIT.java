package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Message;
import yardlight.channels.mail.MailSettings.Timeouts;
import yardlight.channels.mail.ScriptedServer.After;

/** Connections are kept, and nothing is lost by it. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class KeptConnectionsIT {

    private static final Timeouts SHORT =
            new Timeouts(Duration.ofSeconds(5), Duration.ofSeconds(2), Duration.ofSeconds(20));

    private ScriptedServer server;
    private SmtpChannel channel;

    @BeforeEach
    void open() throws IOException {
        server = new ScriptedServer();
        channel = SmtpChannel.smsMail(Optional.of(Settings.with(server.port(), SHORT)));
    }

    @AfterEach
    void close() throws IOException {
        channel.close();
        server.close();
    }

    private Attempt send(int number) {
        return channel.send(
                new Message("callout-" + number, "5755550101@txt.example", "text " + number, Instant.EPOCH));
    }

    @Test
    void one_connection_carries_one_message_after_the_other() {
        for (int i = 0; i < 20; i++) {
            assertThat(send(i).outcome()).isEqualTo(Outcome.ACCEPTED);
        }

        assertThat(server.connections).hasValue(1);
        assertThat(server.commands)
                .filteredOn(command -> command.startsWith("EHLO"))
                .hasSize(1);
        assertThat(server.mails).hasSize(20);
    }

    @Test
    void a_connection_that_went_stale_costs_nothing() throws IOException {
        send(1);
        server.hangUpOnAll();

        Attempt attempt = send(2);

        assertThat(attempt.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(server.mails).hasSize(2);
        assertThat(server.connections).hasValue(2);
    }

    @ParameterizedTest
    @CsvSource({"421 4.4.2 idle for too long, HANG_UP", "'', HANG_UP", "'', RESET", "'', SILENCE"})
    void a_server_that_is_tired_of_a_connection_gets_the_message_on_another(String words, After what) {
        send(1);
        server.doesOnce("MAIL", words, what);

        Attempt attempt = send(2);

        assertThat(attempt.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(server.mails).hasSize(2);
    }

    @Test
    void a_message_is_tried_on_one_fresh_connection_and_no_more() {
        send(1);
        server.does("MAIL", "421 closing", After.HANG_UP);

        assertThat(send(2).outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(server.connections).hasValue(2);
    }

    @Test
    void what_was_cut_after_the_line_was_named_is_not_tried_on_the_spot() {
        send(1);
        server.does("RCPT", "", After.HANG_UP);

        assertThat(send(2).outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(server.connections).hasValue(1);
    }

    @Test
    void what_nobody_knows_of_is_not_sent_again_on_the_spot() {
        send(1);
        server.does(".", "", After.HANG_UP);

        assertThat(send(2).outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(server.mails).hasSize(2);
    }

    @Test
    void a_connection_that_was_idle_is_asked_first() {
        send(1);
        await().pollDelay(Duration.ofMillis(1_100)).until(() -> true);
        server.does("NOOP", "", After.SILENCE);

        assertThat(send(2).outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(server.commands).contains("NOOP");
        assertThat(server.connections).hasValue(2);
    }

    @Test
    void idle_connections_are_closed_after_a_while() {
        channel.close();
        channel = new SmtpChannel(
                Form.TEXT, Optional.of(Settings.with(server.port(), SHORT)), Optional.empty(), Duration.ofMillis(300));
        send(1);

        await().atMost(Duration.ofSeconds(10)).until(() -> server.guests() == 0);
        assertThat(server.commands).endsWith("QUIT");
        assertThat(send(2).outcome()).isEqualTo(Outcome.ACCEPTED);
    }

    @Test
    void closing_the_channel_closes_its_connections() {
        send(1);
        channel.close();

        await().atMost(Duration.ofSeconds(10)).until(() -> server.guests() == 0);
    }

    @Test
    void many_senders_share_four_connections() throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(16);
        List<Callable<Attempt>> sends = IntStream.range(0, 400)
                .<Callable<Attempt>>mapToObj(i -> () -> send(i))
                .toList();
        try {
            for (Future<Attempt> done : hands.invokeAll(sends)) {
                assertThat(done.get().outcome()).isEqualTo(Outcome.ACCEPTED);
            }
        } finally {
            hands.shutdownNow();
        }

        assertThat(server.connections.get()).isBetween(2, Connections.MOST);
        assertThat(server.mails)
                .hasSize(400)
                .extracting(ScriptedServer.Mail::text)
                .doesNotHaveDuplicates();
    }

    @Test
    void a_sender_for_whom_no_connection_gets_free_is_told_so() throws Exception {
        server.does("GREETING", "", After.DRIP);
        channel.close();
        Timeouts hasty = new Timeouts(Duration.ofSeconds(2), Duration.ofSeconds(1), Duration.ofSeconds(1));
        channel = SmtpChannel.smsMail(Optional.of(Settings.with(server.port(), hasty)));
        ExecutorService hands = Executors.newFixedThreadPool(5);
        try {
            List<Future<Attempt>> all = hands.invokeAll(IntStream.range(0, 5)
                    .<Callable<Attempt>>mapToObj(i -> () -> send(i))
                    .toList());
            for (Future<Attempt> done : all) {
                assertThat(done.get().outcome()).isEqualTo(Outcome.DEFERRED);
            }
        } finally {
            hands.shutdownNow();
        }

        assertThat(server.connections.get()).isLessThanOrEqualTo(5);
        assertThat(server.mails).isEmpty();
    }
}
