package yardlight.gateway.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** An alarm through the whole gateway to a provider with an HTTP interface, which takes numbers of one kind only. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class ProviderNightIT {

    private static final String SECRET = "not-a-real-key-4711";
    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String SETUP = Documents.CONTRACT.replace(
            "{channel: sms-mail, address: 5755550101@txt.example}",
            "{channel: http-voice, address: \"+15755550101\"}, {channel: http-text, address: \"+15755550101\"}");

    private static final List<String> CALLS = new CopyOnWriteArrayList<>();
    private static final HttpServer PROVIDER = provider();

    private final Web web;

    ProviderNightIT(@LocalServerPort int port) {
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        String url = "http://127.0.0.1:" + PROVIDER.getAddress().getPort();
        registry.add("yardlight.http.voice.url", () -> url + "/voice");
        registry.add("yardlight.http.voice.body", () -> "{\"to\":\"{to}\",\"say\":\"{text}\"}");
        registry.add("yardlight.http.voice.authentication", () -> "bearer");
        registry.add("yardlight.http.voice.secret", () -> SECRET);
        registry.add("yardlight.http.text.url", () -> url + "/text");
        registry.add("yardlight.http.text.content-type", () -> FORM);
        registry.add("yardlight.http.text.body", () -> "to={to}&text={text}");
    }

    @AfterAll
    static void close() {
        PROVIDER.stop(0);
    }

    @Test
    void one_that_refuses_the_number_is_left_for_the_next_line_and_its_key_is_nowhere_to_be_read() {
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);

        JsonNode event = event();
        String id = event.get("results").get(0).get("alarm").asString();

        await().atMost(Duration.ofSeconds(20)).until(() -> CALLS.stream().anyMatch(call -> call.startsWith("/text")));
        assertThat(CALLS.get(0))
                .startsWith("/voice Bearer " + SECRET
                        + " {\"to\":\"+15755550101\",\"say\":\"MESA 9 WATER TANK HIGH-HIGH 18.4 ft");
        assertThat(CALLS.get(1)).startsWith("/text null to=%2B15755550101&text=MESA%209%20WATER%20TANK");
        String alarm = await().atMost(Duration.ofSeconds(20))
                .until(() -> read("/api/v1/alarms/" + id), body -> body.contains("handed-over"));
        assertThat(alarm).contains("422 no such number for [secret]");
        for (String path :
                List.of("/api/v1/alarms/" + id, "/api/v1/log", "/api/v1/setup", "/actuator/health/readiness")) {
            assertThat(read(path)).doesNotContain(SECRET);
        }
        assertThat(read("/actuator/health/readiness")).contains("http-voice", "messages go out through 127.0.0.1");
    }

    private JsonNode event() {
        HttpResponse<String> key = web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner());
        return Web.json(web.post(
                "/api/v1/events",
                FORM,
                "point=water-tank&condition=high-high&state=active&value=18.4&limit=18.0&unit=ft",
                "Authorization",
                "Bearer " + Web.json(key).get("key").asString()));
    }

    private String read(String path) {
        return web.get(path, Web.owner()).body();
    }

    private static HttpServer provider() {
        try {
            HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 50);
            server.createContext("/", exchange -> {
                String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
                String path = exchange.getRequestURI().getPath();
                String known = exchange.getRequestHeaders().getFirst("Authorization");
                CALLS.add(path + " " + known + " " + body);
                boolean voice = path.equals("/voice");
                byte[] words = (voice ? "no such number for " + SECRET : "taken").getBytes(StandardCharsets.UTF_8);
                exchange.sendResponseHeaders(voice ? 422 : 200, words.length);
                exchange.getResponseBody().write(words);
                exchange.close();
            });
            server.start();
            return server;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
