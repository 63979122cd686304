package yardlight.gateway.arrival;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** A body that comes in pieces is answered as one that comes at once, unless it comes too slowly. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {"yardlight.arrival.within=PT5S", "server.tomcat.connection-timeout=3s"})
class ArrivalIT {

    private static final String EVENTS = "/api/v1/events";
    private static final String EVENT = "{\"point\": \"tank\", \"condition\": \"high\", \"state\": \"active\"}";
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final Web web;
    private String key;

    ArrivalIT(@LocalServerPort int port) {
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeEach
    void a_box_with_a_key() {
        web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner());
        key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {EVENT + " | 202", "{\"point\": \"tank\"} | 422", "{ | 400"})
    void drop_by_drop_it_is_answered_as_if_it_had_come_at_once(String body, int status) throws IOException {
        HttpResponse<String> atOnce = web.post(EVENTS, "application/json", body, "Authorization", "Bearer " + key);

        try (var slow = post(Sender.key(key) + Sender.length(body.length()))) {
            slow.drip(body);

            assertThat(slow.status()).isEqualTo(status).isEqualTo(atOnce.statusCode());
        }
    }

    /** It is asked for a second time when its body is there, and must not pass for one that was let in before. */
    @Test
    void drop_by_drop_it_needs_a_key_all_the_same() throws IOException {
        try (var stranger = post(Sender.length(EVENT.length()))) {
            stranger.drip(EVENT);

            assertThat(stranger.status()).isEqualTo(401);
        }
    }

    @Test
    void two_requests_on_one_connection_are_both_answered() throws IOException {
        String head = "POST " + EVENTS + " HTTP/1.1\r\nHost: here\r\n" + Sender.json() + Sender.key(key)
                + Sender.length(EVENT.length()) + "Connection: close\r\n\r\n";
        try (var slow = post(Sender.key(key) + Sender.length(EVENT.length()))) {
            slow.drip(EVENT);
            assertThat(slow.status()).isEqualTo(202);
            slow.send(head + EVENT);

            assertThat(slow.rest()).contains("HTTP/1.1 202");
        }
    }

    @Test
    void chunks_may_be_cut_anywhere() throws IOException {
        try (var slow = post(Sender.key(key) + "Transfer-Encoding: chunked\r\n")) {
            slow.drip("5\r\n" + EVENT.substring(0, 5) + "\r\n");
            slow.drip(Integer.toHexString(EVENT.length() - 5) + "\r\n" + EVENT.substring(5) + "\r\n0\r\n\r\n");

            assertThat(slow.status()).isEqualTo(202);
        }
    }

    @Test
    void chunks_that_never_end_are_refused() throws IOException {
        String megabyte = "100000\r\n" + " ".repeat(1024 * 1024) + "\r\n";
        long most = Runtime.getRuntime().maxMemory() / 64 / 1024 / 1024;
        try (var endless = post(Sender.key(key) + "Transfer-Encoding: chunked\r\n")) {
            for (int i = 0; i <= 2 * Math.max(2, Math.min(32, most)) && !endless.answered(); i++) {
                endless.send(megabyte);
            }

            assertThat(endless.status()).isEqualTo(413);
        }
    }

    @Test
    void the_form_of_a_page_is_read_too() throws IOException {
        HttpResponse<String> page = web.get("/login");
        Matcher token = TOKEN.matcher(page.body());
        assertThat(token.find()).isTrue();
        String cookie = page.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
        String fields =
                "username=owner&password=" + GatewayTest.PASSWORD.replace(' ', '+') + "&_csrf=" + token.group(1);

        try (var slow = new Sender(
                web.port(),
                "/login",
                "Content-Type: application/x-www-form-urlencoded\r\nCookie: " + cookie + "\r\nConnection: close\r\n"
                        + Sender.length(fields.length()))) {
            slow.drip(fields);

            assertThat(slow.rest())
                    .startsWith("HTTP/1.1 302")
                    .contains("JSESSIONID")
                    .doesNotContain("/login?error");
        }
    }

    @Test
    void what_takes_too_long_is_told_so_and_cut_off() throws IOException {
        try (var slow = post(Sender.key(key) + Sender.length(1000))) {
            while (!slow.answered()) {
                slow.send(" ");
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(100));
            }

            assertThat(slow.status()).isEqualTo(408);
            assertThat(slow.rest()).contains("Connection: close", "took too long");
        }
    }

    @Test
    void what_stands_still_is_cut_off() throws IOException {
        try (var still = post(Sender.key(key) + Sender.length(1000))) {
            still.send(" ");

            assertThat(still.rest()).isEmpty();
        }
    }

    private Sender post(String headers) throws IOException {
        return new Sender(web.port(), EVENTS, Sender.json() + headers);
    }
}
