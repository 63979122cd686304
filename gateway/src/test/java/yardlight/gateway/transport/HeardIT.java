package yardlight.gateway.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import yardlight.gateway.RunningGateway;

/** Where a gateway without TLS is heard, on real sockets. */
@ExtendWith(OutputCaptureExtension.class)
class HeardIT {

    @Test
    void on_this_machine_only_under_both_of_its_addresses_and_it_warns(CapturedOutput said) throws IOException {
        int port = freePort();
        try (RunningGateway gateway = RunningGateway.with("server.port=" + port)) {
            assertThat(gateway.port()).isEqualTo(port);
            assertThat(answer("127.0.0.1", port)).startsWith("HTTP/1.1 200");
            assertThat(answer("localhost", port)).startsWith("HTTP/1.1 200");
            if (Loopback.hasNew()) {
                assertThat(answer("::1", port)).startsWith("HTTP/1.1 200").doesNotContain("Server:");
            }
            for (InetAddress other : others()) {
                assertThat(isOpen(other, port)).as(other.toString()).isFalse();
            }
        }
        assertThat(said).contains("plain HTTP, heard on this machine only", "server.address=0.0.0.0 opens it");
    }

    /** A browser that is told {@code localhost} tries the new address first; its pages must not be four times as long there. */
    @Test
    void with_the_same_short_pages_under_both_of_its_addresses() throws IOException {
        int port = freePort();
        String page = "GET /login HTTP/1.1\r\nAccept-Encoding: gzip\r\n";
        try (RunningGateway gateway = RunningGateway.with("server.port=" + port)) {
            assertThat(answer("127.0.0.1", gateway.port(), page)).contains("gzip");
            assumeTrue(Loopback.hasNew(), "SKIPPED: this machine has no ::1");
            assertThat(answer("::1", gateway.port(), page)).contains("gzip");
        }
    }

    @Test
    void where_it_is_told_and_it_warns_of_that(CapturedOutput said) {
        try (RunningGateway gateway = RunningGateway.with("server.address=0.0.0.0")) {
            Optional<InetAddress> other = others().stream()
                    .filter(address -> address.getAddress().length == 4)
                    .findFirst();
            assumeTrue(other.isPresent(), "this machine has no other address than loopback");
            assertThat(isOpen(other.get(), gateway.port())).isTrue();
        }
        assertThat(said).contains("heard at every address of this machine: keys, passwords and links can be read");
    }

    @Test
    void on_one_address_of_its_own_when_the_system_chooses_the_port() throws IOException {
        try (RunningGateway gateway = RunningGateway.with()) {
            assertThat(answer("127.0.0.1", gateway.port())).startsWith("HTTP/1.1 200");
            assertThat(answer("localhost", gateway.port())).startsWith("HTTP/1.1 200");
        }
    }

    @Test
    void over_tls_that_a_proxy_speaks_only_where_a_proxy_is_set() throws IOException {
        try (RunningGateway gateway = RunningGateway.with("server.forward-headers-strategy=native")) {
            assertThat(login(gateway.port(), "X-Forwarded-Proto: https\r\n"))
                    .contains("Strict-Transport-Security: max-age=31536000", "; Secure");
            assertThat(login(gateway.port(), "")).doesNotContain("Strict-Transport-Security", "; Secure");
        }
        try (RunningGateway alone = RunningGateway.with()) {
            assertThat(login(alone.port(), "X-Forwarded-Proto: https\r\n"))
                    .startsWith("HTTP/1.1 200")
                    .doesNotContain("Strict-Transport-Security", "; Secure");
            assertThat(answer("127.0.0.1", alone.port(), "TRACE / HTTP/1.1\r\nX-Echo: echo-this\r\n"))
                    .startsWith("HTTP/1.1 4")
                    .doesNotContain("echo-this");
        }
    }

    private static String login(int port, String header) throws IOException {
        return answer("127.0.0.1", port, "GET /login HTTP/1.1\r\n" + header);
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    private static String answer(String host, int port) throws IOException {
        return answer(host, port, "GET /actuator/health/liveness HTTP/1.1\r\n");
    }

    private static String answer(String host, int port, String head) throws IOException {
        try (var socket = new Socket(host, port)) {
            socket.getOutputStream()
                    .write((head + "Host: localhost\r\nConnection: close\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static boolean isOpen(InetAddress address, int port) {
        try (var socket = new Socket()) {
            socket.connect(new InetSocketAddress(address, port), 2_000);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private static List<InetAddress> others() {
        try {
            return NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(address -> !address.isLoopbackAddress() && !address.isLinkLocalAddress())
                    .toList();
        } catch (SocketException e) {
            return List.of();
        }
    }
}
