package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Message;
import yardlight.channels.smpp.SmppSettings.Timeouts;

/** Ports behind which there is no message centre, or one that writes what none should. On bare sockets. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class StrangeCentreIT {

    private static final Timeouts SHORT =
            new Timeouts(Duration.ofSeconds(2), Duration.ofMillis(800), Duration.ofSeconds(4), Duration.ofMinutes(1));

    /** bind_transceiver_resp to sequence number 1: SMPP v3.4 section 4.1.6, an empty system_id. */
    private static final String BOUND = "00000011800000090000000000000001" + "00";

    private ServerSocket door;
    private SmppChannel channel;

    @BeforeEach
    void open() throws IOException {
        door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        channel =
                SmppChannel.of(Optional.of(Centres.at(door.getLocalPort(), SHORT)), InstantSource.fixed(Instant.EPOCH));
    }

    @AfterEach
    void close() throws IOException {
        door.close();
        channel.close();
    }

    private Attempt send() {
        return channel.send(new Message("callout-7.2", "+15755550101", "MESA 9", Instant.EPOCH));
    }

    /** Answers the first request that it hears with this, and each next one with the next. */
    private void answers(String... units) {
        Thread thread = new Thread(() -> {
            while (!door.isClosed()) {
                try {
                    Socket socket = door.accept();
                    InputStream in = socket.getInputStream();
                    for (String unit : units) {
                        readRequest(in);
                        socket.getOutputStream().write(HexFormat.of().parseHex(unit));
                    }
                } catch (IOException e) {
                    // The other side has left, or the test is over.
                }
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    /** The next unit of data that is not itself an answer: those have the first bit of their command set. */
    private static void readRequest(InputStream in) throws IOException {
        byte[] head;
        do {
            head = in.readNBytes(8);
            in.readNBytes((head[2] & 0xFF) * 256 + (head[3] & 0xFF) - head.length);
        } while (head[4] < 0);
    }

    @ParameterizedTest
    @CsvSource({
        "485454502F312E3120343030, it does not speak SMPP",
        "7FFFFFFF8000000900000000, it does not speak SMPP",
        "0000000080000009, it does not speak SMPP",
        "80000000000000030000000300000001, it does not speak SMPP",
        "00000010800000000000000300000001, invalid command id",
        "00000010800000150000000000000001, something else was answered",
        "000000108000, no answer to the bind"
    })
    void whatever_it_says_to_the_bind_texts_wait(String unit, String words) {
        answers(unit);

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.general()).isTrue();
        assertThat(attempt.detail()).contains(words);
    }

    @Test
    void nobody_at_home_texts_wait() throws IOException {
        door.close();

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.detail()).startsWith("localhost:" + door.getLocalPort());
    }

    @Test
    void a_host_that_nobody_knows_texts_wait() {
        var nowhere = new SmppSettings("no-such-host.invalid", 2775, false, Centres.LOGIN, Optional.empty(), 1, SHORT);
        try (SmppChannel none = SmppChannel.of(Optional.of(nowhere), InstantSource.fixed(Instant.EPOCH))) {
            Attempt attempt = none.send(new Message("callout-7.2", "+15755550101", "MESA 9", Instant.EPOCH));

            assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
            assertThat(attempt.detail()).isEqualTo("no-such-host.invalid:2775: no such host is known");
        }
    }

    /** SMPP v3.4 section 4.3.1, read (2nd): a generic_nack instead of the answer. */
    @Test
    void a_text_that_is_not_understood_is_our_fault_and_waits() {
        answers(BOUND, "00000010800000000000000200000002");

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.general()).isTrue();
        assertThat(attempt.detail()).contains("invalid command length");
    }

    @ParameterizedTest
    @CsvSource({
        "00000010800000040000000000000002, ACCEPTED",
        "00000013800000040000000000000002616263, ACCEPTED",
        "000000148000000400000000000000024142FFFF, ACCEPTED",
        "0000001480000004000000580000000200FFFFFF, DEFERRED",
        "000000118000000400000000000000FF00, UNKNOWN",
        "0000000F80000004, UNKNOWN"
    })
    void of_an_answer_that_cannot_be_read_whole_the_status_counts(String unit, Outcome outcome) {
        answers(BOUND, unit);

        assertThat(send().outcome()).isEqualTo(outcome);
    }

    @Test
    void a_centre_that_asks_for_what_we_do_not_know_is_told_so_and_kept() {
        // cancel_sm, then an alert_notification, then the answer to the text.
        answers(
                BOUND + "00000010000000080000000000000009" + "00000010000001020000000000000008",
                "00000011800000040000000000000002" + "00");

        assertThat(send().outcome()).isEqualTo(Outcome.ACCEPTED);
    }
}
