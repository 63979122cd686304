package yardlight.gateway;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.gateway.setup.Documents;

/** What the owner does, through the whole gateway: the setup, keys, rehearsals. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class OwnerIT {

    private static final String JSON = "application/json";

    private final Web web;

    private final JdbcTemplate jdbc;
    private final People people;
    private final PasswordEncoder passwords;

    @Autowired
    OwnerIT(@LocalServerPort int port, JdbcTemplate jdbc, People people, PasswordEncoder passwords) {
        this.web = new Web(port);
        this.jdbc = jdbc;
        this.people = people;
        this.passwords = passwords;
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

    @Test
    void a_bad_setup_is_refused_and_the_good_one_stays() {
        HttpResponse<String> refused =
                web.put("/api/v1/setup", "application/yaml", Documents.WRONG_ALL_OVER, Web.owner());

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Web.json(refused).get("errors").size()).isGreaterThan(15);
        HttpResponse<String> kept = web.get("/api/v1/setup", Web.owner());
        assertThat(kept.headers().firstValue("Content-Type")).contains("application/yaml");
        assertThat(kept.body()).isEqualTo(Documents.CONTRACT);
        HttpResponse<String> json = web.get("/api/v1/setup", "Authorization", Doors.basic("owner"), "Accept", JSON);
        assertThat(Web.json(json).get("contacts").get(0).get("id").asString()).isEqualTo("ana");
    }

    @Test
    void a_reader_sees_who_is_called_and_not_by_which_address() {
        people.keep(new Person("rosa", passwords.encode(GatewayTest.PASSWORD), Role.READER), Instant.EPOCH);

        HttpResponse<String> seen = web.get("/api/v1/setup", "Authorization", Doors.basic("rosa"));

        assertThat(seen.statusCode()).isEqualTo(200);
        assertThat(seen.body()).contains("Ana Ruelas", "***0101@txt.example").doesNotContain("5755550101");
    }

    @Test
    void a_rehearsal_says_who_would_be_told() {
        HttpResponse<String> rehearsal = web.post("/api/v1/rehearsals", JSON, """
                {"site": "mesa-9", "point": "water-tank", "condition": "high-high", "at": "2026-11-25T08:13:00Z",
                 "answers": [{"contact": "ben", "after": "PT12M"}]}
                """, Web.owner());

        assertThat(rehearsal.statusCode()).isEqualTo(200);
        JsonNode first = Web.json(rehearsal).get(0);
        assertThat(first.get("at").asString()).isEqualTo("2026-11-25T08:13:00Z");
        assertThat(first.get("what").asString()).isEqualTo("told");
        assertThat(first.get("contact").asString()).isEqualTo("ana");
        assertThat(first.get("channel").asString()).isEqualTo("sms-mail");
    }

    @Test
    void a_key_that_was_revoked_opens_nothing() {
        HttpResponse<String> made = web.post("/api/v1/boxes/mesa-9-box/keys", JSON, "", Web.owner());
        String key = Web.json(made).get("key").asString();
        String where = made.headers().firstValue("Location").orElseThrow();
        assertThat(heartbeat(key).statusCode()).isEqualTo(202);

        assertThat(web.call("DELETE", where, Web.owner()).statusCode()).isEqualTo(204);

        assertThat(heartbeat(key).statusCode()).isEqualTo(401);
        assertThat(web.call("DELETE", where, Web.owner()).statusCode()).isEqualTo(404);
    }

    @Test
    void a_key_that_another_gateway_revoked_opens_nothing_a_moment_later() {
        HttpResponse<String> made = web.post("/api/v1/boxes/mesa-9-box/keys", JSON, "", Web.owner());
        String key = Web.json(made).get("key").asString();
        assertThat(heartbeat(key).statusCode()).isEqualTo(202);

        jdbc.update(
                "update box_key set revoked_at = current_timestamp where id = ?",
                Web.json(made).get("id").asString());

        await().atMost(ofSeconds(3)).until(() -> heartbeat(key).statusCode() == 401);
    }

    @Test
    void a_box_that_left_the_setup_is_not_known_any_more() {
        String key = key();
        assertThat(heartbeat(key).statusCode()).isEqualTo(202);

        web.put(
                "/api/v1/setup",
                "application/yaml",
                Documents.CONTRACT.replace("id: mesa-9-box", "id: mesa-9-other"),
                Web.owner());

        assertThat(heartbeat(key).statusCode()).isEqualTo(401);
    }

    private HttpResponse<String> heartbeat(String key) {
        return web.post("/api/v1/heartbeats", JSON, "", "Authorization", "Bearer " + key);
    }

    private String key() {
        HttpResponse<String> made = web.post("/api/v1/boxes/mesa-9-box/keys", JSON, "", Web.owner());
        assertThat(made.statusCode()).isEqualTo(201);
        return Web.json(made).get("key").asString();
    }
}
