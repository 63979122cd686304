package yardlight.demo.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Against a server that writes exactly the bytes of the test, whatever it is asked. */
class HttpConnectionTest {

    private final ServerSocket server = listen();

    @AfterEach
    void close() throws IOException {
        server.close();
    }

    @Test
    void reads_answers_with_a_length_in_chunks_and_without_a_body_one_after_the_other() throws IOException {
        writes("HTTP/1.1 202 \r\ncontent-length: 5\r\n\r\nhello"
                + "HTTP/1.1 422 \r\nTransfer-Encoding: chunked\r\n\r\n3\r\nabc\r\n10\r\n0123456789abcdef\r\n0\r\n\r\n"
                + "HTTP/1.1 204 \r\n\r\n");

        try (HttpConnection http = new HttpConnection(server.getLocalPort())) {
            assertThat(http.exchange(HttpConnection.get("/"))).isEqualTo(202);
            assertThat(http.exchange(HttpConnection.get("/"))).isEqualTo(422);
            assertThat(http.exchange(HttpConnection.get("/"))).isEqualTo(204);
        }
    }

    @Test
    void does_not_take_a_broken_connection_for_an_answer() throws IOException {
        writes("HTTP/1.1 202 \r\ncontent-length: 50\r\n\r\nhello");

        try (HttpConnection http = new HttpConnection(server.getLocalPort())) {
            assertThatThrownBy(() -> http.exchange(HttpConnection.get("/"))).isInstanceOf(EOFException.class);
        }
    }

    @Test
    void opens_itself_anew_when_the_server_says_that_it_closes() throws IOException {
        writes("HTTP/1.1 202 \r\nContent-Length: 2\r\nConnection: close\r\n\r\n{}");

        try (HttpConnection http = new HttpConnection(server.getLocalPort())) {
            assertThat(http.exchange(HttpConnection.get("/"))).isEqualTo(202);
            writes("HTTP/1.1 200 \r\nContent-Length: 0\r\n\r\n");
            assertThat(http.exchange(HttpConnection.get("/"))).isEqualTo(200);
        }
    }

    private static ServerSocket listen() {
        try {
            return new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void writes(String bytes) {
        Thread thread = new Thread(() -> {
            try (Socket client = server.accept()) {
                client.getOutputStream().write(bytes.getBytes(StandardCharsets.US_ASCII));
                client.shutdownOutput();
                client.getInputStream().readAllBytes();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        thread.setDaemon(true);
        thread.start();
    }
}
