package yardlight.gateway.watch;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.channels.web.Limits;

/** Against a server that is not ours. */
class HttpOtherTest {

    private static final String KEY = "k9-of-the-other-yard";
    private static final Duration UP = Duration.ofSeconds(7);

    private final List<String> heard = new CopyOnWriteArrayList<>();
    private HttpServer server;

    @BeforeEach
    void open() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.start();
    }

    @AfterEach
    void close() {
        server.stop(0);
    }

    private void answers(String path, int status, String location, String body) {
        server.createContext(path, exchange -> {
            String sent = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
            heard.add(exchange.getRequestMethod() + " " + exchange.getRequestURI() + " "
                    + exchange.getRequestHeaders().getFirst("Authorization") + " "
                    + exchange.getRequestHeaders().getFirst("Content-Type") + " " + sent);
            if (!location.isEmpty()) {
                exchange.getResponseHeaders().add("Location", location);
            }
            byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
            exchange.getResponseBody().write(bytes);
            exchange.close();
        });
    }

    private Other.Told tell() {
        URI url = URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/yard/");
        var limits = new Limits(Duration.ofSeconds(5), Duration.ofSeconds(5));
        return new HttpOther(new Watcher(url, KEY, Duration.ofMinutes(1), limits)).tell(UP);
    }

    @Test
    void gets_a_heartbeat_as_a_box_posts_it_and_says_when_the_next_is_expected() {
        answers("/yard/api/v1/heartbeats", 202, "", "{\"received\": \"2026-11-25T08:13:00Z\", \"next\": \"PT5M\"}");

        Other.Told told = tell();

        assertThat(told.trouble()).isEmpty();
        assertThat(told.next()).contains(Duration.ofMinutes(5));
        assertThat(heard)
                .containsExactly("POST /yard/api/v1/heartbeats Bearer " + KEY + " application/json {\"uptime\": 7}");
    }

    @Test
    void has_heard_although_its_answer_cannot_be_read() {
        answers("/yard/api/v1/heartbeats", 202, "", "all right");

        assertThat(tell()).isEqualTo(Other.Told.heard(Optional.empty()));
    }

    @Test
    void that_does_not_know_the_key_has_not_heard() {
        answers("/yard/api/v1/heartbeats", 401, "", "you said " + KEY);

        assertThat(tell()).isEqualTo(Other.Told.unheard("it does not know the key (401)"));
    }

    @Test
    void that_is_too_busy_has_not_heard_and_its_words_are_not_repeated() {
        answers("/yard/api/v1/heartbeats", 503, "", "you said " + KEY);

        assertThat(tell()).isEqualTo(Other.Told.unheard("it answers 503"));
    }

    @Test
    void that_points_elsewhere_is_not_followed_with_the_key() {
        answers("/yard/api/v1/heartbeats", 307, "/elsewhere", "");
        answers("/elsewhere", 202, "", "{}");

        assertThat(tell().trouble()).contains("it points elsewhere, which is not followed (307)");
        assertThat(heard).hasSize(1);
    }

    @Test
    void that_is_not_there_is_said_without_the_key() {
        server.stop(0);

        assertThat(tell().trouble())
                .hasValueSatisfying(why ->
                        assertThat(why).contains("127.0.0.1 cannot be reached").doesNotContain(KEY));
    }
}
