package yardlight.gateway.incoming;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.BeforeEach;
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
import yardlight.db.incoming.IncomingText;
import yardlight.db.incoming.IncomingTexts;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** What comes in by a channel, through the whole gateway. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class IncomingIT {

    private static final String ANA = "+15755550101";
    private static final String SETUP = Documents.CONTRACT.replace(
            "{channel: sms-mail, address: 5755550101@txt.example}",
            "{channel: pigeon, address: \"" + ANA + "\"}, {channel: pigeon, address: \"+15755550103\"}");

    private static int number;

    private final Web web;
    private final Pigeon pigeon;
    private final IncomingTexts texts;

    @TestConfiguration
    static class Loft {

        @Bean
        Pigeon pigeon() {
            return new Pigeon();
        }
    }

    IncomingIT(@LocalServerPort int port, @Autowired Pigeon pigeon, @Autowired IncomingTexts texts) {
        this.web = new Web(port);
        this.pigeon = pigeon;
        this.texts = texts;
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeEach
    void set_up() {
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);
        pigeon.carried.clear();
    }

    @Test
    void an_ok_acknowledges_and_is_answered_once_however_often_it_is_brought() {
        String alarm = raised();
        Message call = carried(0);
        String code = call.text().replaceAll("(?s).*OK (\\d+).*", "$1");

        assertThat(pigeon.brings("m1", ANA, "ok " + code + " on my way")).isTrue();
        assertThat(pigeon.brings("m1", ANA, "ok " + code + " on my way")).isTrue();

        Message answer = carried(1);
        assertThat(answer.address()).isEqualTo(ANA);
        assertThat(answer.text()).startsWith("You have it, Ana Ruelas: Mesa 9 WATER TANK");
        assertThat(read(alarm).get("acknowledgedBy").asString()).isEqualTo("ana");
        assertThat(log()).contains("+15755550101 wrote: ok " + code + " on my way; answered: You have it");
        assertThat(pigeon.carried).hasSize(2);
    }

    @Test
    void what_is_not_understood_changes_nothing_and_is_asked_back() {
        String alarm = raised();
        carried(0);

        pigeon.brings("m2", ANA, "is 47 ok?");

        assertThat(carried(1).text()).startsWith("Not understood, nothing was done.");
        assertThat(read(alarm).get("state").asString()).isEqualTo("unacknowledged");
    }

    @Test
    void a_machine_is_not_answered() {
        String alarm = raised();
        carried(0);

        pigeon.brings("m3", ANA, "Automatic reply: I'm out of the office. OK 47");
        pigeon.brings("m4", ANA, "status");

        assertThat(carried(1).text()).contains("1 wait for an answer");
        assertThat(pigeon.carried).hasSize(2);
        assertThat(read(alarm).get("state").asString()).isEqualTo("unacknowledged");
    }

    @Test
    void a_receipt_says_that_it_was_delivered() {
        String alarm = raised();

        assertThat(pigeon.says(carried(0), Receipt.Fate.DELIVERED)).isTrue();

        await(() -> notice(alarm).get("state").asString().equals("delivered"));
        assertThat(notice(alarm).get("deliveredAt").asString()).isNotEmpty();
    }

    @Test
    void a_receipt_that_it_will_not_get_there_sends_it_to_the_next_line_at_once() {
        raised();

        pigeon.says(carried(0), Receipt.Fate.REFUSED);

        assertThat(carried(1).address()).isEqualTo("+15755550103");
    }

    @Test
    void who_says_stop_is_told_so_once_and_nothing_else_until_they_say_start() {
        raised();
        carried(0);

        assertThat(pigeon.brings("m5", ANA, "STOP")).isTrue();
        await(() -> toAna("Nothing more comes here. Your other lines are still used."));
        assertThat(pigeon.brings("m6", ANA, "stop")).isTrue();
        assertThat(pigeon.brings("m7", ANA, "help")).isTrue();
        assertThat(pigeon.brings("m8", ANA, "START")).isTrue();
        await(() -> toAna("You are called here again."));

        assertThat(pigeon.carried)
                .filteredOn(message -> message.address().equals(ANA))
                .hasSize(3);
        assertThat(log())
                .contains("line pigeon of ana is stopped: Ana Ruelas wrote STOP from +15755550101")
                .contains("+15755550101 wrote: help; not answered")
                .contains("line pigeon of ana is taken up again: Ana Ruelas wrote START from +15755550101");
    }

    @Test
    void an_answer_that_waits_does_not_go_to_who_has_stopped_meanwhile() {
        raised();
        carried(0);
        assertThat(pigeon.brings("m9", ANA, "STOP")).isTrue();
        await(() -> toAna("Nothing more comes here."));
        Instant before = Instant.now();

        texts.keep(new IncomingText("pigeon/m10", "pigeon", ANA, "status", before, "put off before they said so"));

        await(() -> texts.open(before.minusSeconds(1), Instant.now().plusSeconds(120), 9)
                .isEmpty());
        assertThat(toAna("put off")).isFalse();
        assertThat(pigeon.brings("m11", ANA, "START")).isTrue();
        await(() -> toAna("You are called here again."));
    }

    /** Each test has an alarm of its own, of which Ana is told first. */
    private String raised() {
        HttpResponse<String> key = web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner());
        acknowledgeAll();
        HttpResponse<String> answer = web.post(
                "/api/v1/events",
                "application/x-www-form-urlencoded",
                "point=water-tank&condition=high-" + ++number + "&state=active&priority=critical",
                "Authorization",
                "Bearer " + Web.json(key).get("key").asString());
        return Web.json(answer).get("results").get(0).get("alarm").asString();
    }

    private void acknowledgeAll() {
        for (String state : List.of("unacknowledged", "returned-unacknowledged")) {
            for (JsonNode alarm : Web.json(web.get("/api/v1/alarms?state=" + state, Web.owner()))) {
                web.post(
                        "/api/v1/alarms/" + alarm.get("id").asString() + "/acknowledge",
                        "application/json",
                        "{}",
                        Web.owner());
            }
        }
        pigeon.carried.clear();
    }

    private boolean toAna(String words) {
        return pigeon.carried.stream()
                .anyMatch(message ->
                        message.address().equals(ANA) && message.text().startsWith(words));
    }

    private Message carried(int place) {
        await(() -> pigeon.carried.size() > place);
        return pigeon.carried.get(place);
    }

    private JsonNode notice(String alarm) {
        return read(alarm).get("callout").get("notices").get(0);
    }

    private JsonNode read(String alarm) {
        return Web.json(web.get("/api/v1/alarms/" + alarm, Web.owner()));
    }

    private String log() {
        return web.get("/api/v1/log", Web.owner()).body();
    }

    private static void await(Callable<Boolean> done) {
        org.awaitility.Awaitility.await().atMost(Duration.ofSeconds(10)).until(done);
    }
}
