package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.gateway.link.Tokens;
import yardlight.gateway.setup.Documents;

/** The links in texts: long, bound to one notice, good for a week, of use once, and nothing to whoever only looks. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class LinksIT {

    private static final String FORM = "application/x-www-form-urlencoded";

    /** Everything that a look could leave behind. */
    private static final List<String> TABLES =
            List.of("link", "log_line", "line_health", "notice", "alarm", "callout", "outbox", "incoming_text", "due");

    private final Web web;
    private final Tokens tokens;
    private final JdbcTemplate jdbc;

    @Autowired
    LinksIT(@LocalServerPort int port, Tokens tokens, JdbcTemplate jdbc) {
        this.web = new Web(port);
        this.tokens = tokens;
        this.jdbc = jdbc;
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeEach
    void set_up() {
        assertThat(web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner())
                        .statusCode())
                .isEqualTo(200);
    }

    /** So that the next alarm is a call of its own. */
    @AfterEach
    void acknowledge_all() {
        for (JsonNode alarm : Web.json(web.get("/api/v1/alarms", Web.owner()))) {
            String path = "/api/v1/alarms/" + alarm.get("id").asString() + "/acknowledge";
            web.post(path, "application/json", "{\"contact\": \"ben\"}", Web.owner());
        }
    }

    /** Posts an alarm, and waits until its text has gone out and nothing moves any more. */
    private String noticeOf(String point) {
        post(point);
        return await().atMost(Duration.ofSeconds(20))
                .until(() -> sent(point), Optional::isPresent)
                .orElseThrow();
    }

    private void post(String point) {
        HttpResponse<String> made = web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner());
        String key = Web.json(made).get("key").asString();
        String fields = "point=" + point + "&condition=high&state=active&priority=high";
        assertThat(web.post("/api/v1/events", FORM, fields, "Authorization", "Bearer " + key)
                        .statusCode())
                .isEqualTo(202);
    }

    private Optional<String> sent(String point) {
        var notices = Web.json(web.get("/api/v1/alarms/mesa-9." + point + ".high.1", Web.owner()))
                .at("/callout/notices/0");
        return notices.path("state").asString("").equals("handed-over")
                ? Optional.of(notices.get("id").asString())
                : Optional.empty();
    }

    private String state(String point) {
        return Web.json(web.get("/api/v1/alarms/mesa-9." + point + ".high.1", Web.owner()))
                .get("state")
                .asString();
    }

    private Map<String, List<Map<String, Object>>> everything() {
        var all = new TreeMap<String, List<Map<String, Object>>>();
        TABLES.forEach(table -> all.put(table, jdbc.queryForList("select * from " + table)));
        return all;
    }

    @Test
    void have_128_bits_that_nobody_can_guess() {
        String token = tokens.token("n.1", Instant.now());

        assertThat(Base64.getUrlDecoder().decode(token)).hasSize(16);
        assertThat(web.get("/a/" + "A".repeat(22)).statusCode()).isEqualTo(404);
    }

    @Test
    void change_nothing_when_a_scanner_or_a_preview_opens_them() {
        String link = "/a/" + tokens.token(noticeOf("separator"), Instant.now());
        var before = everything();

        assertThat(web.get(link).statusCode()).isEqualTo(200);
        assertThat(web.call("HEAD", link).statusCode()).isEqualTo(200);
        assertThat(web.get(link, "Sec-Purpose", "prefetch;prerender", "Purpose", "prefetch")
                        .statusCode())
                .isEqualTo(200);
        assertThat(web.call("OPTIONS", link).statusCode()).isEqualTo(200);
        assertThat(web.get(link + "?confirm=yes&_method=POST", "X-HTTP-Method-Override", "POST")
                        .statusCode())
                .isEqualTo(200);
        assertThat(web.call("PUT", link).statusCode()).isEqualTo(405);

        assertThat(everything()).usingRecursiveComparison().isEqualTo(before);
        assertThat(state("separator")).isEqualTo("unacknowledged");
    }

    @Test
    void act_for_their_own_notice_and_for_no_other() {
        String first = "/a/" + tokens.token(noticeOf("heater"), Instant.now());
        post("gas-line");

        assertThat(web.post(first, FORM, "notice=another").statusCode()).isEqualTo(303);

        assertThat(state("heater")).isEqualTo("acknowledged");
        assertThat(state("gas-line")).isEqualTo("unacknowledged");
    }

    @Test
    void act_once() {
        String link = "/a/" + tokens.token(noticeOf("flare"), Instant.now());
        assertThat(web.post(link, FORM, "").statusCode()).isEqualTo(303);
        int lines = jdbc.queryForObject("select count(*) from log_line where what = 'answer'", Integer.class);
        assertThat(lines).isPositive();

        assertThat(web.post(link, FORM, "").statusCode()).isEqualTo(303);

        assertThat(jdbc.queryForObject("select count(*) from log_line where what = 'answer'", Integer.class))
                .isEqualTo(lines);
        assertThat(web.get(link).body()).contains("Ana Ruelas has it since").doesNotContain("<button");
    }

    /** Made before the key was replaced, followed afterwards; one made afterwards has the other key. */
    @Test
    void keep_working_when_another_key_takes_over_and_end_when_it_takes_their_place() {
        String notice = noticeOf("tank-battery");
        Instant made = Instant.now();
        String link = "/a/" + tokens.token(notice, made);

        HttpResponse<String> another = web.post("/api/v1/link-keys", "application/json", "", Web.owner());
        assertThat(another.statusCode()).isEqualTo(201);
        Instant from = Instant.parse(Web.json(another).get("from").asString());

        assertThat(tokens.token(notice, from)).isNotEqualTo(tokens.token(notice, made));
        assertThat(web.get(link).statusCode()).isEqualTo(200);

        String used = "/a/" + tokens.token(noticeOf("treater"), Instant.now());
        assertThat(web.post(used, FORM, "").statusCode()).isEqualTo(303);
        String instead = "{\"endOthers\": true}";
        assertThat(web.post("/api/v1/link-keys", "application/json", instead, Web.owner())
                        .statusCode())
                .isEqualTo(201);
        assertThat(tokens.token(notice, made)).isNotEqualTo(link.substring("/a/".length()));
        assertThat(web.get(link).statusCode()).isEqualTo(404);
        assertThat(web.post(link, FORM, "").statusCode()).isEqualTo(404);
        assertThat(state("tank-battery")).isEqualTo("unacknowledged");
        assertThat(web.get(used).statusCode()).isEqualTo(404);
    }

    @Test
    void are_told_apart_by_their_last_letter() {
        String token = tokens.token(noticeOf("pit"), Instant.now());
        char other = token.charAt(0) == 'A' ? 'B' : 'A';

        assertThat(web.post("/a/" + other + token.substring(1), FORM, "").statusCode())
                .isEqualTo(404);
        assertThat(web.post("/a/" + token.substring(1), FORM, "").statusCode()).isEqualTo(404);
        assertThat(state("pit")).isEqualTo("unacknowledged");
    }

    @Test
    void end_after_a_week() {
        String notice = noticeOf("sump");
        String link = "/a/" + tokens.token(notice, Instant.now());
        jdbc.update(
                "insert into link (token_hash, notice, expires_at) values (?, ?, dateadd(second, -1,"
                        + " current_timestamp))",
                tokens.hashFor(notice, Instant.now()),
                notice);

        assertThat(web.get(link).statusCode()).isEqualTo(410);
        assertThat(web.post(link, FORM, "").statusCode()).isEqualTo(410);
        assertThat(state("sump")).isEqualTo("unacknowledged");
        assertThat(Tokens.LIFE).isEqualTo(Duration.ofDays(7));
    }
}
