package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.gateway.setup.Documents;

/** One alarm from the box to the answer, through the whole gateway: HTTP in, SMTP out, an H2 file between. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class NightIT {

    private static final String JSON = "application/json";
    private static final String FORM = "application/x-www-form-urlencoded";

    private final Web web;

    NightIT(@LocalServerPort int port) {
        this.web = new Web(port);
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
    void a_box_posts_ana_is_told_follows_the_link_and_has_it() throws Exception {
        JsonNode event = event("point=water-tank&condition=high-high&state=active&value=18.4&limit=18.0&unit=ft");
        String id = event.get("results").get(0).get("alarm").asString();

        assertThat(event.get("results").get(0).get("outcome").asString()).isEqualTo("occurred");
        String text = Mails.textTo("5755550101@txt.example", "WATER TANK");
        assertThat(text).contains("MESA 9 WATER TANK HIGH-HIGH 18.4 ft");
        String link = Mails.link(text);
        for (int scan = 0; scan < 3; scan++) {
            assertThat(web.get(link).body()).contains("I have it", "nobody has it yet");
        }
        assertThat(alarm(id).get("state").asString()).isEqualTo("unacknowledged");

        HttpResponse<String> pressed = web.post(link, FORM, "");

        assertThat(pressed.statusCode()).isEqualTo(303);
        assertThat(web.get(link).body()).contains("Ana Ruelas has it since").doesNotContain("<button");
        JsonNode alarm = alarm(id);
        assertThat(alarm.get("state").asString()).isEqualTo("acknowledged");
        assertThat(alarm.get("acknowledgedBy").asString()).isEqualTo("ana");
        assertThat(alarm.get("value").asString()).isEqualTo("18.4");
        assertThat(alarm.get("callout").get("state").asString()).isEqualTo("answered");
        assertThat(alarm.get("callout").get("ladder").asString()).isEqualTo("night");
        JsonNode notice = alarm.get("callout").get("notices").get(0);
        assertThat(notice.get("contact").asString()).isEqualTo("ana");
        assertThat(notice.get("channel").asString()).isEqualTo("sms-mail");
        assertThat(notice.get("state").asString()).isEqualTo("handed-over");
        assertThat(notice.get("attempts").get(0).get("outcome").asString()).isEqualTo("accepted");
        assertThat(web.post(link, FORM, "").statusCode()).isEqualTo(303);
        assertThat(log("contact=ana")).contains("\"notice\"");
    }

    @Test
    void a_link_is_shown_to_who_may_acknowledge_and_to_nobody_else() {
        JsonNode event = event("point=separator&condition=high&state=active&priority=high");
        String id = event.get("results").get(0).get("alarm").asString();
        String link = Mails.link(Mails.textTo("5755550101@txt.example", "SEPARATOR HIGH"));
        String[] reader = {"Authorization", Doors.basic("rita")};
        web.put(
                "/api/v1/logins/rita",
                JSON,
                "{\"role\": \"reader\", \"password\": \"" + GatewayTest.PASSWORD + "\"}",
                Web.owner());

        assertThat(web.get("/api/v1/alarms/" + id, Web.owner()).body()).contains(link);
        for (String path : List.of("/api/v1/alarms/" + id, "/api/v1/alarms", "/api/v1/log")) {
            assertThat(web.get(path, reader).body())
                    .contains("SEPARATOR HIGH", "/a/" + "*".repeat(22))
                    .doesNotContain(link);
        }
        assertThat(log("contact=ana")).doesNotContain(link);
    }

    @Test
    void a_text_that_comes_back_with_the_code_answers_too() {
        JsonNode event = event("point=separator&condition=low&state=active&priority=high");
        String id = event.get("results").get(0).get("alarm").asString();
        String code = alarm(id).get("callout").get("code").asString();

        HttpResponse<String> reply = web.post(
                "/api/v1/replies",
                JSON,
                "{\"from\": \"+1 575 555 0101\", \"text\": \"ok " + code + ".\"}",
                "Authorization",
                "Bearer " + GatewayTest.REPLIES_KEY);

        assertThat(reply.statusCode()).isEqualTo(200);
        assertThat(Web.json(reply).get("acknowledged").get(0).asString()).isEqualTo(id);
        assertThat(Web.json(reply).get("answer").asString())
                .isEqualTo("You have it, Ana Ruelas: Mesa 9 SEPARATOR low.");
        assertThat(alarm(id).get("state").asString()).isEqualTo("acknowledged");
    }

    @Test
    void a_point_that_nobody_set_up_is_taken_and_the_first_page_says_so() {
        event("point=heater&condition=off&state=active&text=%3Cscript%3Ealert(1)%3C/script%3E");

        HttpResponse<String> page = web.get("/", Web.owner());

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("HEATER off", "Nobody has it", "the point is not set up yet", "hard-wired shutdowns stay")
                .doesNotContain("<script>")
                .doesNotContainPattern("/a/[A-Za-z0-9_-]{22}");
    }

    @Test
    void what_the_rules_refuse_is_a_conflict_with_the_reason() {
        JsonNode event = event("point=gas-line&condition=leak&state=active&priority=high");
        String id = event.get("results").get(0).get("alarm").asString();

        HttpResponse<String> reset = action(id, "reset", "{}");
        assertThat(reset.statusCode()).isEqualTo(409);
        assertThat(Web.json(reset).get("detail").asString())
                .isEqualTo("cannot reset an alarm that is unacknowledged: gas-line/leak");
        assertThat(action(id, "acknowledge", "{\"contact\": \"ben\", \"note\": \"on my way\"}")
                        .statusCode())
                .isEqualTo(200);
        assertThat(action(id, "shelve", "{\"for\": \"PT2H\", \"reason\": \"welding\"}")
                        .statusCode())
                .isEqualTo(200);
        assertThat(alarm(id).get("state").asString()).isEqualTo("shelved");
        assertThat(action(id, "unshelve", "").statusCode()).isEqualTo(200);
        assertThat(alarm(id).get("acknowledgedBy").asString()).isEqualTo("ben");

        event("point=gas-line&condition=leak&state=normal");
        event("point=gas-line&condition=leak&state=active");
        HttpResponse<String> late = action(id, "acknowledge", "{}");
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(Web.json(late).get("detail").asString()).contains("occurred again");
    }

    private JsonNode event(String fields) {
        HttpResponse<String> answer = web.post("/api/v1/events", FORM, fields, "Authorization", "Bearer " + key());
        assertThat(answer.statusCode()).isEqualTo(202);
        return Web.json(answer);
    }

    private String key() {
        HttpResponse<String> made = web.post("/api/v1/boxes/mesa-9-box/keys", JSON, "", Web.owner());
        assertThat(made.statusCode()).isEqualTo(201);
        return Web.json(made).get("key").asString();
    }

    private HttpResponse<String> action(String id, String action, String body) {
        return web.post("/api/v1/alarms/" + id + "/" + action, JSON, body, Web.owner());
    }

    private JsonNode alarm(String id) {
        return Web.json(web.get("/api/v1/alarms/" + id, Web.owner()));
    }

    private String log(String query) {
        return web.get("/api/v1/log?" + query, Web.owner()).body();
    }
}
