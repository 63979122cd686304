package yardlight.gateway.hostile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/**
 * The same hostile inputs byte for byte through the real server into the real lane: what the database holds afterwards is what was
 * answered with 202 or 200, and nothing else.
 */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class HostileNightIT {

    private static final long SEED = Long.getLong("yardlight.hostile.seed", 1);
    private static final int INPUTS = Integer.getInteger("yardlight.hostile.sockets", 1_500);
    private static final Pattern ALARM = Pattern.compile("\"alarm\":\"([^\"]+)\"");

    private static final Pattern KEPT = Pattern.compile("\"kept\":(\\d+)");

    /** Of all tests here: they share the gateway. */
    private static int setups;

    private final Web web;
    private final JdbcTemplate jdbc;
    private final Set<String> answered = new HashSet<>();
    private String key;
    private int kept;
    /** Taken ones: each may say that a feed is off. */
    private int heartbeats;

    @Autowired
    HostileNightIT(@LocalServerPort int port, JdbcTemplate jdbc) {
        this.web = new Web(port);
        this.jdbc = jdbc;
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        registry.add("yardlight.allowance.burst", () -> "1000000");
    }

    @BeforeEach
    void set_up() {
        setUp();
        HttpResponse<String> made = web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner());
        key = Web.json(made).get("key").asString();
    }

    private void setUp() {
        assertThat(web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner())
                        .statusCode())
                .isEqualTo(200);
        setups++;
    }

    @Test
    void leaves_in_the_database_what_was_answered_and_nothing_else() throws IOException {
        for (int number = 0; number < INPUTS; number++) {
            var hostile = new Hostile(SEED, number);
            Target target = hostile.one(java.util.List.of(Target.values()));
            // A key that ends the others would shut the box out.
            if (target != Target.KEY) {
                one(target, hostile.spoilt(hostile.one(target.good), target.good), number);
            }
        }

        assertThat(answered).isNotEmpty();
        await().atMost(Duration.ofSeconds(20))
                .untilAsserted(() -> assertThat(jdbc.queryForObject("select setup_version from lane", Integer.class))
                        .isEqualTo(setups));
        assertThat(answered)
                .containsAll(jdbc.queryForList(
                        "select id from alarm where point <> 'box' and point not like 'power-%' and id not like '%.0'",
                        String.class));
        assertThat(jdbc.queryForObject("select count(*) from alarm where point like 'power-%'", Integer.class))
                .isLessThanOrEqualTo(heartbeats);
        assertThat(kept).isPositive();
        assertThat(jdbc.queryForObject("select count(*) from reading", Integer.class))
                .isEqualTo(kept);
        assertThat(jdbc.queryForObject("select count(*) from alarm where acknowledged_at is not null", Integer.class))
                .isZero();
        assertThat(jdbc.queryForObject("select count(*) from link where used_at is not null", Integer.class))
                .isZero();
        assertThat(web.get("/actuator/health/liveness").statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource({
        "GET, /api/v1/alarms?state=%ff",
        "GET, /api/v1/log?%c0%80=x",
        "GET, /login?wrong=%ff",
        "GET, /?page=%80",
        "POST, /login?x=%ff",
        "POST, /logout?x=%ff",
        "POST, /api/v1/events?x=%ff",
        "POST, /a/AAAAAAAAAAAAAAAAAAAAAA?x=%ff",
        "GET, /yardlight.css?%ff"
    })
    void a_query_that_is_no_text_is_the_caller_s_mistake(String method, String path) {
        int status = web.call(method, path, "Authorization", "Bearer " + key).statusCode();
        int asOwner = web.call(method, path, Web.owner()).statusCode();

        assertThat(status).isBetween(200, 499);
        assertThat(asOwner).isBetween(200, 499);
    }

    private void one(Target target, byte[] input, int number) throws IOException {
        String answer = raw(target, input);
        assertThat(answer).as("seed %d, number %d, %s", SEED, number, target).matches("(?s)HTTP/1\\.1 [234]\\d\\d .*");
        boolean taken = answer.startsWith("HTTP/1.1 2");
        if (taken && target.path.equals("/api/v1/events")) {
            Matcher alarm = ALARM.matcher(answer);
            while (alarm.find()) {
                answered.add(alarm.group(1));
            }
        }
        Matcher readings = KEPT.matcher(answer);
        if (taken && target.path.equals("/api/v1/readings") && readings.find()) {
            kept += Integer.parseInt(readings.group(1));
        }
        heartbeats += taken && target == Target.HEARTBEAT ? 1 : 0;
        if (taken && target.path.equals("/api/v1/setup")) {
            setups++;
            setUp();
        }
    }

    private String raw(Target target, byte[] input) throws IOException {
        boolean inPath = target.where == Target.Where.PATH || target.where == Target.Where.QUERY;
        byte[] body = target.where == Target.Where.BODY ? input : new byte[0];
        var head = new StringBuilder(
                target.method + " " + target.path + (inPath ? Hostile.percent(input) : "") + " HTTP/1.1\r\n");
        head.append("Host: localhost\r\nConnection: close\r\nContent-Length: " + body.length + "\r\n");
        head.append(target.type.isEmpty() ? "" : "Content-Type: " + target.type + "\r\n");
        head.append(
                switch (target.who) {
                    case BOX -> "Authorization: Bearer " + key + "\r\n";
                    case OWNER -> "Authorization: Basic " + owner() + "\r\n";
                    case PROVIDER -> "Authorization: Bearer " + GatewayTest.REPLIES_KEY + "\r\n";
                    case NOBODY -> "";
                });
        if (target.where == Target.Where.HEADER) {
            head.append("Signature-Input: " + Hostile.header(input) + "\r\nSignature: box=:AAAA:\r\n");
        }
        var request = new ByteArrayOutputStream();
        request.writeBytes(head.append("\r\n").toString().getBytes(StandardCharsets.ISO_8859_1));
        request.writeBytes(body);
        try (var socket = new Socket("127.0.0.1", web.port())) {
            socket.setSoTimeout(60_000);
            socket.getOutputStream().write(request.toByteArray());
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String owner() {
        return Base64.getEncoder().encodeToString(("owner:" + GatewayTest.PASSWORD).getBytes(StandardCharsets.UTF_8));
    }
}
