package yardlight.channels.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.web.RawServer.Manners;
import yardlight.channels.web.Reply.Answer;
import yardlight.channels.web.Reply.Silence;

/** An exchange with a server of bare sockets that has bad manners. */
@Timeout(60)
class ExchangesIT {

    private static final Limits PATIENT = new Limits(Duration.ofSeconds(10), Duration.ofSeconds(30));
    private static final Limits HASTY = new Limits(Duration.ofMillis(300), Duration.ofMillis(1_000));

    private static final String FINE = "HTTP/1.1 200 fine\r\nContent-Length: 5\r\n\r\ntaken";

    private RawServer server;

    private Reply ask(Limits limits, String method, String body, Manners manners) throws IOException {
        server = new RawServer(manners);
        return ask(limits, method, body, server.port());
    }

    private static Reply ask(Limits limits, String method, String body, int port) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/"));
        return new Exchanges(limits).ask(request, method, body.getBytes(StandardCharsets.UTF_8));
    }

    @AfterEach
    void close() throws IOException {
        if (server != null) {
            server.close();
        }
    }

    @Test
    void brings_an_answer() throws IOException {
        Reply reply = ask(PATIENT, "POST", "one", guest -> {
            guest.head();
            guest.body(3);
            guest.says(FINE);
        });

        assertThat(reply).isInstanceOfSatisfying(Answer.class, answer -> {
            assertThat(answer.status()).isEqualTo(200);
            assertThat(answer.text()).isEqualTo("taken");
            assertThat(answer.whole()).isTrue();
        });
    }

    @Test
    void knows_that_nothing_was_sent_where_nobody_is() throws IOException {
        int port;
        try (ServerSocket gone = new ServerSocket(0)) {
            port = gone.getLocalPort();
        }

        assertThat(ask(PATIENT, "POST", "one", port)).isInstanceOfSatisfying(Silence.class, silence -> {
            assertThat(silence.sent()).isFalse();
            assertThat(silence.why()).contains("127.0.0.1 cannot be reached");
        });
        assertThat(ask(PATIENT, "GET", "", port))
                .isInstanceOfSatisfying(
                        Silence.class, silence -> assertThat(silence.sent()).isFalse());
    }

    @Test
    void knows_that_nothing_was_sent_to_a_host_that_there_is_not() {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://nobody.invalid/"));

        assertThat(new Exchanges(PATIENT).ask(request, "POST", new byte[] {1}))
                .isEqualTo(new Silence(false, "no host is known as nobody.invalid"));
    }

    @Test
    void gives_up_a_connection_that_nobody_takes_and_knows_that_nothing_was_sent() throws IOException {
        List<Socket> crowd = new ArrayList<>();
        try (ServerSocket full = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            for (int i = 0; i < 3; i++) {
                Socket socket = new Socket();
                crowd.add(socket);
                try {
                    socket.connect(full.getLocalSocketAddress(), 200);
                } catch (IOException e) {
                    // It is full, which was wanted.
                }
            }

            assertThat(ask(HASTY, "POST", "one", full.getLocalPort()))
                    .isEqualTo(new Silence(false, "127.0.0.1 cannot be reached within 300 ms"));
        } finally {
            for (Socket socket : crowd) {
                socket.close();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "GET"})
    void does_not_ask_twice_when_the_server_hangs_up_after_the_request(String method) throws IOException {
        Reply reply = ask(PATIENT, method, method.equals("GET") ? "" : "one", guest -> {
            guest.head();
            guest.body(method.equals("GET") ? 0 : 3);
        });

        assertThat(reply).isEqualTo(new Silence(true, "127.0.0.1 hung up without an answer"));
        assertThat(server.requests).hasValue(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "GET"})
    void does_not_ask_twice_when_a_kept_connection_ends_instead_of_a_second_answer(String method) throws IOException {
        server = new RawServer(guest -> {
            guest.head();
            guest.says(FINE);
            guest.head();
        });
        Exchanges exchanges = new Exchanges(PATIENT);
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + "/"));

        assertThat(exchanges.ask(request, method, new byte[0])).isInstanceOf(Answer.class);
        assertThat(exchanges.ask(request, method, new byte[0]))
                .isInstanceOfSatisfying(
                        Silence.class, silence -> assertThat(silence.sent()).isTrue());
        assertThat(server.requests).hasValue(2);
    }

    @Test
    void knows_that_a_long_body_was_not_all_sent_when_it_was_cut_in_the_middle() throws IOException {
        Reply reply = ask(PATIENT, "POST", "long".repeat(5_000_000), guest -> {
            guest.head();
            guest.body(1_000);
            guest.resets();
        });

        assertThat(reply)
                .isInstanceOfSatisfying(
                        Silence.class, silence -> assertThat(silence.sent()).isFalse());
    }

    @Test
    void does_not_wait_longer_than_its_time_for_an_answer() throws IOException {
        Reply reply = ask(HASTY, "POST", "one", guest -> {
            guest.head();
            guest.isSilent();
        });

        assertThat(reply).isEqualTo(new Silence(true, "no answer from 127.0.0.1 within 1 s"));
    }

    @Test
    void does_not_wait_longer_than_its_time_for_a_header_that_drips() throws IOException {
        Reply reply = ask(HASTY, "POST", "one", guest -> {
            guest.head();
            guest.says("HTTP/1.1 200 fine\r\nLong: ");
            guest.drips();
        });

        assertThat(reply)
                .isInstanceOfSatisfying(
                        Silence.class, silence -> assertThat(silence.sent()).isTrue());
    }

    @Test
    void goes_by_the_header_when_the_body_drips() throws IOException {
        Reply reply = ask(HASTY, "POST", "one", guest -> {
            guest.head();
            guest.says("HTTP/1.1 422 no\r\nContent-Length: 100000\r\n\r\nno such number ");
            guest.drips();
        });

        assertThat(reply).isInstanceOfSatisfying(Answer.class, answer -> {
            assertThat(answer.status()).isEqualTo(422);
            assertThat(answer.text()).startsWith("no such number x");
            assertThat(answer.whole()).isFalse();
        });
    }

    @Test
    void goes_by_the_header_when_the_body_is_cut() throws IOException {
        Reply reply = ask(PATIENT, "POST", "one", guest -> {
            guest.head();
            guest.says("HTTP/1.1 200 fine\r\nContent-Length: 100\r\n\r\nhalf");
        });

        assertThat(reply).isInstanceOfSatisfying(Answer.class, answer -> {
            assertThat(answer.status()).isEqualTo(200);
            assertThat(answer.whole()).isFalse();
        });
    }

    @Test
    void reads_no_more_than_it_wants_of_a_body_without_an_end() throws IOException {
        Reply reply = ask(PATIENT, "POST", "one", guest -> {
            guest.head();
            guest.says("HTTP/1.1 200 fine\r\n\r\n");
            while (true) {
                guest.says("x".repeat(10_000));
            }
        });

        assertThat(reply).isInstanceOfSatisfying(Answer.class, answer -> {
            assertThat(answer.body()).hasSize(Exchanges.MOST_BODY);
            assertThat(answer.whole()).isFalse();
        });
    }

    @Test
    void takes_what_is_no_answer_for_silence() throws IOException {
        Reply reply = ask(PATIENT, "POST", "one", guest -> {
            guest.head();
            guest.says("220 mail.example ready\r\n");
        });

        assertThat(reply)
                .isInstanceOfSatisfying(
                        Silence.class, silence -> assertThat(silence.sent()).isTrue());
    }

    @Test
    void does_not_follow_a_redirect() throws IOException {
        Reply reply = ask(PATIENT, "GET", "", guest -> {
            guest.head();
            guest.says("HTTP/1.1 302 there\r\nLocation: /elsewhere\r\nContent-Length: 0\r\n\r\n");
        });

        assertThat(reply)
                .isInstanceOfSatisfying(
                        Answer.class, answer -> assertThat(answer.status()).isEqualTo(302));
        assertThat(server.requests).hasValue(1);
    }

    @Test
    void takes_an_answer_without_a_length_and_a_401_without_a_challenge() throws IOException {
        Reply reply = ask(PATIENT, "POST", "one", guest -> {
            guest.head();
            guest.body(3);
            guest.says("HTTP/1.1 401 who\r\n\r\nnot you");
        });

        assertThat(reply).isInstanceOfSatisfying(Answer.class, answer -> {
            assertThat(answer.status()).isEqualTo(401);
            assertThat(answer.text()).isEqualTo("not you");
        });
    }
}
