package yardlight.channels.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.web.Reply.Answer;
import yardlight.channels.web.Reply.Silence;

/** Whom an exchange tells anything: only who shows a certificate in the server's name. */
@Timeout(60)
class TlsIT {

    private static final Limits PATIENT = new Limits(Duration.ofSeconds(10), Duration.ofSeconds(30));
    private static final Limits HASTY = new Limits(Duration.ofMillis(300), Duration.ofMillis(1_000));

    private static final RawServer.Manners FINE = guest -> {
        guest.head();
        guest.body(3);
        guest.says("HTTP/1.1 200 fine\r\nContent-Length: 5\r\n\r\ntaken");
    };

    @TempDir
    Path folder;

    private static RawServer server(SSLContext shown) throws IOException {
        ServerSocket door = shown.getServerSocketFactory().createServerSocket(0, 50, InetAddress.getLoopbackAddress());
        return new RawServer(door, FINE);
    }

    private static Reply ask(Exchanges exchanges, String method, int port) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("https://127.0.0.1:" + port + "/"));
        return exchanges.ask(request, method, method.equals("GET") ? new byte[0] : "one".getBytes());
    }

    @Test
    void a_server_with_the_right_certificate() throws Exception {
        SSLContext context = TestCertificate.of(folder, "ip:127.0.0.1");
        try (RawServer server = server(context)) {
            Reply reply = ask(new Exchanges(PATIENT, Optional.of(context)), "POST", server.port());

            assertThat(reply)
                    .isInstanceOfSatisfying(
                            Answer.class, answer -> assertThat(answer.text()).isEqualTo("taken"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "GET"})
    void not_one_that_signs_its_own(String method) throws Exception {
        try (RawServer server = server(TestCertificate.of(folder, "ip:127.0.0.1"))) {
            Reply reply = ask(new Exchanges(PATIENT), method, server.port());

            assertThat(reply).isInstanceOfSatisfying(Silence.class, silence -> {
                assertThat(silence.sent()).isFalse();
                assertThat(silence.why()).startsWith("no TLS with 127.0.0.1: ");
            });
            assertThat(server.requests).hasValue(0);
        }
    }

    @Test
    void not_one_with_the_certificate_of_another() throws Exception {
        SSLContext context = TestCertificate.of(folder, "dns:elsewhere.example");
        try (RawServer server = server(context)) {
            Reply reply = ask(new Exchanges(PATIENT, Optional.of(context)), "POST", server.port());

            assertThat(reply)
                    .isInstanceOfSatisfying(
                            Silence.class, silence -> assertThat(silence.sent()).isFalse());
            assertThat(server.requests).hasValue(0);
        }
    }

    @Test
    void not_one_that_hangs_up_before_it_has_shown_one() throws Exception {
        try (RawServer server = new RawServer(guest -> guest.body(20))) {
            assertThat(ask(new Exchanges(PATIENT), "POST", server.port()))
                    .isInstanceOfSatisfying(
                            Silence.class, silence -> assertThat(silence.sent()).isFalse());
        }
    }

    /** The JDK's client would try again by itself, and being kept from it it no longer says why: so there is a doubt. */
    @Test
    void not_one_that_hangs_up_on_a_GET_before_it_has_shown_one() throws Exception {
        try (RawServer server = new RawServer(guest -> guest.body(20))) {
            assertThat(ask(new Exchanges(PATIENT), "GET", server.port())).isInstanceOf(Silence.class);
            assertThat(server.requests).hasValue(0);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "GET"})
    void not_one_that_never_shows_one(String method) throws Exception {
        try (RawServer server = new RawServer(RawServer.Guest::isSilent)) {
            assertThat(ask(new Exchanges(HASTY), method, server.port()))
                    .isInstanceOfSatisfying(
                            Silence.class, silence -> assertThat(silence.sent()).isFalse());
        }
    }
}
