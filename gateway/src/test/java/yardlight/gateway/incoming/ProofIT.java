package yardlight.gateway.incoming;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Bean;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.channels.Message;
import yardlight.channels.Receipt;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** From a button to the proof that a line works, and back onto the pages: through the whole gateway, from outside. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class ProofIT {

    private static final String FORM = "application/x-www-form-urlencoded";

    private static int contact;

    private final Web web;
    private final Pigeon pigeon;
    private final String id = "ana-" + ++contact;
    private final String phone = "+1575555015" + contact;

    @TestConfiguration
    static class Loft {

        @Bean
        Pigeon pigeon() {
            return new Pigeon();
        }
    }

    /** Each test has a contact of its own, so that none is hindered by the pause after another one's. */
    ProofIT(@LocalServerPort int port, @Autowired Pigeon pigeon) {
        this.web = new Web(port);
        this.pigeon = pigeon;
        String setup = Documents.CONTRACT
                .replaceAll("(?m)^ +quiet: .*$", "")
                .replace(
                        "rosters:",
                        "  - {id: " + id
                                + ", name: Ana, allsWell: {at: \"07:00\"}, lines: [{channel: pigeon, address: \""
                                + phone + "\"}, {channel: pigeon, address: \"+15755550199\"}]}\nrosters:");
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", setup, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);
        pigeon.carried.clear();
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @Test
    void a_test_is_answered_by_its_code_and_the_line_is_proven() {
        assertThat(line(0).get("proven").asBoolean()).isFalse();
        assertThat(board()).contains("not proven for 30 days: line 1 (pigeon), line 2 (pigeon)");

        HttpResponse<String> asked = test(1);

        assertThat(asked.statusCode()).as(asked.body()).isEqualTo(202);
        assertThat(Web.json(asked).get("test").get("answered").asBoolean()).isFalse();
        Message text = carried(0);
        assertThat(text.address()).isEqualTo(phone);
        assertThat(text.text())
                .startsWith("Yardlight test, no alarm: this is line 1 (pigeon). Reply OK 1 or https://yl.example/a/");
        await(() -> line(0).has("handedOverAt"));
        assertThat(line(0).get("proven").asBoolean()).isFalse();

        pigeon.brings(id, phone, "ok 1");

        assertThat(carried(1).text()).isEqualTo("Thank you. The test got to you by line 1 (pigeon).");
        assertThat(line(0).get("proven").asBoolean()).isTrue();
        assertThat(line(0).get("test").get("answered").asBoolean()).isTrue();
        assertThat(line(1).get("proven").asBoolean()).isFalse();
        assertThat(board()).contains("last reached 0 s ago", "not proven for 30 days: line 2 (pigeon)");
        assertThat(web.get("/api/v1/log?contact=" + id, Web.owner()).body())
                .contains("owner tests line 1 by pigeon", "line by pigeon proven by the answer to its test");
    }

    @Test
    void a_test_is_answered_by_its_link() {
        test(2);
        String link = carried(0).text().replaceAll("(?s).*https://yl.example(/a/\\S{22}).*", "$1");
        assertThat(web.get(link).body()).contains("It got to me");
        assertThat(line(1).get("proven").asBoolean()).isFalse();

        assertThat(web.post(link, FORM, "").statusCode()).isEqualTo(303);

        assertThat(web.get(link).body()).contains("Thank you: this line works.").doesNotContain("<button");
        assertThat(line(1).get("proven").asBoolean()).isTrue();
        assertThat(line(0).get("proven").asBoolean()).isFalse();
    }

    @Test
    void a_receipt_proves_the_line() {
        test(1);

        pigeon.says(carried(0), Receipt.Fate.DELIVERED);

        await(() -> line(0).get("proven").asBoolean());
        assertThat(line(0).has("deliveredAt")).isTrue();
    }

    @Test
    void a_refusal_is_shown_in_the_carriers_words_and_goes_nowhere_else() {
        test(1);

        pigeon.says(carried(0), Receipt.Fate.REFUSED);

        await(() -> line(0).has("trouble"));
        assertThat(line(0).get("trouble").asString()).isEqualTo("pigeon: in the carrier's words");
        assertThat(pigeon.carried).hasSize(1);
        assertThat(web.get("/people/" + id, Web.owner()).body())
                .contains("in the carrier&#39;s words: pigeon", "Not proven for 30 days", "every day at 7:00 AM");
    }

    @Test
    void a_second_test_right_after_the_first_is_a_conflict() {
        assertThat(test(1).statusCode()).isEqualTo(202);

        HttpResponse<String> again = test(1);

        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(Web.json(again).get("detail").asString()).startsWith("this line was tested a moment ago");
        assertThat(pigeon.carried.size()).isLessThan(2);
    }

    @Test
    void a_reader_sees_masked_addresses_and_no_button() {
        String[] reader = {"Authorization", Doors.basic("rita")};
        web.put(
                "/api/v1/logins/rita",
                "application/json",
                "{\"role\": \"reader\", \"password\": \"" + GatewayTest.PASSWORD + "\"}",
                Web.owner());

        for (String path : List.of("/api/v1/lines", "/people/" + id)) {
            assertThat(web.get(path, reader).body()).contains("***0199").doesNotContain(phone, "<button class");
        }
        assertThat(web.post("/api/v1/contacts/" + id + "/lines/1/test", "application/json", "", reader)
                        .statusCode())
                .isEqualTo(403);
    }

    private HttpResponse<String> test(int line) {
        return web.post("/api/v1/contacts/" + id + "/lines/" + line + "/test", "application/json", "", Web.owner());
    }

    private JsonNode line(int place) {
        return Web.json(web.get("/api/v1/lines?contact=" + id, Web.owner())).get(place);
    }

    private String board() {
        return web.get("/", Web.owner()).body();
    }

    private Message carried(int place) {
        await(() -> pigeon.carried.size() > place);
        return pigeon.carried.get(place);
    }

    private static void await(Callable<Boolean> done) {
        org.awaitility.Awaitility.await().atMost(Duration.ofSeconds(10)).until(done);
    }
}
