package yardlight.gateway.modem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.channels.modem.StandInModem;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** An alarm through the whole gateway to a modem on a serial port, and the answer that comes in by it. */
@EnabledIf("yardlight.channels.modem.StandInModem#isPossible")
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class ModemNightIT {

    private static final String ANA = "+15755550101";
    private static final String SETUP = Documents.CONTRACT.replace(
            "{channel: sms-mail, address: 5755550101@txt.example}", "{channel: modem, address: \"" + ANA + "\"}");

    private static StandInModem modem;

    private final Web web;

    ModemNightIT(@LocalServerPort int port) {
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) throws IOException {
        modem = new StandInModem();
        WholeGateway.settings(registry);
        registry.add("yardlight.modem.port", modem::port);
        registry.add("yardlight.modem.number", () -> "+15755550100");
    }

    @AfterAll
    static void close() throws IOException {
        modem.close();
    }

    @Test
    void a_text_goes_out_an_ok_comes_back_and_is_answered_by_one_line() {
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);

        String alarm = raised();
        String call = text(0);
        assertThat(call).startsWith("MESA 9 WATER TANK HIGH-HIGH 18.4 ft");

        modem.delivers(0);
        await().atMost(Duration.ofSeconds(20)).until(() -> read(alarm).contains("\"delivered\""));

        modem.brings(ANA, "ok " + call.replaceAll("(?s).*OK (\\d+).*", "$1") + " on my way");

        assertThat(text(1)).startsWith("You have it, Ana Ruelas: Mesa 9 WATER TANK");
        assertThat(Web.json(web.get("/api/v1/alarms/" + alarm, Web.owner()))
                        .get("acknowledgedBy")
                        .asString())
                .isEqualTo("ana");
        assertThat(web.get("/api/v1/log", Web.owner()).body()).contains(ANA + " wrote: ok ", "answered: You have it");
        assertThat(web.get("/actuator/health/readiness").body()).contains("the modem hears its network at -97 dBm");
        assertThat(modem.texts()).hasSize(2);
    }

    private String raised() {
        HttpResponse<String> key = web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner());
        JsonNode event = Web.json(web.post(
                "/api/v1/events",
                "application/x-www-form-urlencoded",
                "point=water-tank&condition=high-high&state=active&priority=critical&value=18.4&limit=18.0&unit=ft",
                "Authorization",
                "Bearer " + Web.json(key).get("key").asString()));
        return event.get("results").get(0).get("alarm").asString();
    }

    private String text(int place) {
        List<String> texts = await().atMost(Duration.ofSeconds(20)).until(modem::texts, all -> all.size() > place);
        return texts.get(place);
    }

    private String read(String alarm) {
        return web.get("/api/v1/alarms/" + alarm, Web.owner()).body();
    }
}
