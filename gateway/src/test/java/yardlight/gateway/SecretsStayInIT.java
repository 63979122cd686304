package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.db.secret.Secrets;
import yardlight.gateway.link.Tokens;
import yardlight.gateway.setup.Documents;

/** Every secret that a gateway has is marked; then everything that comes out of it is searched for the marks. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@ExtendWith(OutputCaptureExtension.class)
class SecretsStayInIT {

    private static final String JSON = "application/json";
    private static final String WRONG = "marked-wrong-password";
    private static final String NOBODY_HERE = "http://127.0.0.1:9/";

    private static final Map<String, String> PROPERTIES = Map.of(
            "spring.mail.password", "marked-mail-password",
            "yardlight.http.voice.secret", "marked-provider-secret",
            "yardlight.replies.key", "marked-replies-key",
            "yardlight.watched-by.key", "marked-watcher-key",
            "yardlight.owner-password", "marked owner password");

    private final Web web;
    private final Secrets secrets;
    private final Tokens tokens;
    private final JdbcTemplate jdbc;
    private final Map<String, String> marks = new LinkedHashMap<>(PROPERTIES);
    private final List<String> heard = new ArrayList<>();

    @Autowired
    SecretsStayInIT(@LocalServerPort int port, Secrets secrets, Tokens tokens, JdbcTemplate jdbc) {
        this.web = new Web(port);
        this.secrets = secrets;
        this.tokens = tokens;
        this.jdbc = jdbc;
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        PROPERTIES.forEach((name, value) -> registry.add(name, () -> value));
        registry.add("spring.mail.username", () -> "yard");
        registry.add("spring.mail.properties.mail.smtp.auth", () -> "true");
        registry.add("yardlight.http.voice.url", () -> NOBODY_HERE + "send?key={secret}&to={to}&text={text}");
        registry.add("yardlight.http.voice.method", () -> "GET");
        registry.add("yardlight.http.voice.content-type", () -> "text/plain");
        registry.add("yardlight.watched-by.url", () -> NOBODY_HERE);
        registry.add("yardlight.watched-by.every", () -> "1s");
        registry.add("yardlight.push.contact", () -> "mailto:yard@ranch.example");
        registry.add("logging.level.yardlight", () -> "debug");
        registry.add("logging.level.org.springframework.security", () -> "debug");
        registry.add("logging.level.org.springframework.web", () -> "debug");
    }

    private String[] owner() {
        return basic("owner", PROPERTIES.get("yardlight.owner-password"));
    }

    private static String[] basic(String login, String password) {
        return new String[] {
            "Authorization", "Basic " + Base64.getEncoder().encodeToString((login + ":" + password).getBytes())
        };
    }

    @Test
    void nothing_that_comes_out_shows_one(CapturedOutput said) {
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", setup(), owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);
        HttpResponse<String> made = web.post("/api/v1/boxes/mesa-9-box/keys", JSON, "", owner());
        String key = Web.json(made).get("key").asString();
        marks.put("the key of a box", key);
        HttpResponse<String> login = web.put(
                "/api/v1/logins/rita",
                JSON,
                "{\"role\": \"reader\", \"password\": \"marked-login-password\"}",
                owner());
        marks.put("the password of a login", "marked-login-password");
        marks.put("a wrong password", WRONG);
        hear(login);

        String alarm = alarm(key);
        await().atMost(Duration.ofSeconds(30)).until(() -> tried(alarm));
        markWhatIsKept();
        askRightly(key, alarm);
        askWrongly(key);
        await().atMost(Duration.ofSeconds(30)).until(() -> said.getAll().contains("does not hear that all is well"));
        heard.add(said.getAll());

        assertThat(marks).hasSizeGreaterThan(12);
        marks.forEach((what, mark) -> heard.forEach(one -> assertThat(one.contains(mark))
                .as("%s is in: %s", what, around(one, mark))
                .isFalse()));
    }

    private static String setup() {
        return Documents.CONTRACT.replace(
                "{channel: sms-mail, address: 5755550101@txt.example}",
                "{channel: http-voice, address: \"+15755550101\"}");
    }

    private String alarm(String key) {
        HttpResponse<String> posted = web.post(
                "/api/v1/events",
                JSON,
                "{\"point\": \"water-tank\", \"condition\": \"high-high\", \"state\": \"active\"}",
                "Authorization",
                "Bearer " + key);
        return Web.json(posted).get("results").get(0).get("alarm").asString();
    }

    /** Whether the text was tried and failed: what carriers say goes into the log and to people. */
    private boolean tried(String alarm) {
        return web.get("/api/v1/alarms/" + alarm, owner()).body().contains("\"deferred\"");
    }

    private void markWhatIsKept() {
        for (String notice : jdbc.queryForList("select id from notice", String.class)) {
            marks.put("the link of notice " + notice, tokens.token(notice, java.time.Instant.now()));
        }
        for (String name : jdbc.queryForList("select name from secret", String.class)) {
            byte[] content = secrets.get(name, () -> new byte[0], java.time.Instant.EPOCH);
            marks.put(name + " in Base64", Base64.getEncoder().withoutPadding().encodeToString(content));
            marks.put(
                    name + " in a URL", Base64.getUrlEncoder().withoutPadding().encodeToString(content));
            marks.put(name + " in hex", HexFormat.of().formatHex(content));
        }
        for (String hash : jdbc.queryForList("select password_hash from person", String.class)) {
            marks.put("the hash of a password " + hash, hash);
        }
        for (String hash : jdbc.queryForList("select key_hash from box_key", String.class)) {
            marks.put("the hash of a key " + hash, hash);
        }
    }

    private void hear(HttpResponse<String> answer) {
        heard.add(answer.headers().map() + "\n" + answer.body());
    }

    /** Not the alarm as its owner sees it: whoever may answer anyway is shown the link. */
    private void askRightly(String key, String alarm) {
        for (String path : List.of(
                "/api/v1/setup",
                "/api/v1/log",
                "/api/v1/boxes/mesa-9-box/keys",
                "/api/v1/logins",
                "/api/v1/lines",
                "/api/v1/silences",
                "/actuator/prometheus",
                "/actuator/health",
                "/actuator/health/readiness",
                "/v3/api-docs",
                "/",
                "/silences",
                "/contacts/ana",
                "/phone",
                "/login")) {
            hear(web.get(path, owner()));
        }
        String[] reader = basic("rita", "marked-login-password");
        for (String path : List.of("/api/v1/alarms", "/api/v1/alarms/" + alarm, "/", "/contacts/ana", "/api/v1/log")) {
            hear(web.get(path, reader));
        }
        hear(web.get("/api/v1/log", "Authorization", owner()[1], "Accept", "text/csv"));
        hear(web.post("/api/v1/heartbeats", JSON, "{}", "Authorization", "Bearer " + key));
        hear(web.post(
                "/api/v1/replies",
                JSON,
                "{\"from\": \"+15755550199\", \"text\": \"who\"}",
                "Authorization",
                "Bearer " + PROPERTIES.get("yardlight.replies.key")));
    }

    private void askWrongly(String key) {
        hear(web.get("/api/v1/alarms", basic("owner", WRONG)));
        hear(web.post("/login", "application/x-www-form-urlencoded", "username=owner&password=" + WRONG));
        hear(web.post("/api/v1/events", JSON, "{\"point\": 5, \"condition\": ", "Authorization", "Bearer " + key));
        hear(web.post(
                "/api/v1/events", JSON, "{\"point\": \"" + "x".repeat(99) + "\"}", "Authorization", "Bearer " + key));
        hear(web.post("/api/v1/events", JSON, "{}", "Authorization", "Bearer " + key + "x"));
        hear(web.post("/api/v1/events", "image/png", "{}", "Authorization", "Bearer " + key));
        hear(web.get("/api/v1/events", "Authorization", "Bearer " + key));
        hear(web.post(
                "/api/v1/replies",
                JSON,
                "{\"from\": 1}",
                "Authorization",
                "Bearer " + PROPERTIES.get("yardlight.replies.key")));
        hear(web.put("/api/v1/setup", "application/yaml", "sites: {", owner()));
        hear(web.put("/api/v1/setup", "application/yaml", Documents.WRONG_ALL_OVER, owner()));
        hear(web.put("/api/v1/logins/zoe", JSON, "{\"role\": \"boss\", \"password\": \"" + WRONG + "\"}", owner()));
        hear(web.get("//api", owner()));
        hear(web.get("/a/" + "x".repeat(22), owner()));
        hear(web.call("DELETE", "/api/v1/boxes/mesa-9-box/keys/none", owner()));
    }

    private static String around(String text, String mark) {
        int at = text.indexOf(mark);
        return at < 0 ? "" : text.substring(Math.max(0, at - 200), Math.min(text.length(), at + mark.length() + 50));
    }
}
