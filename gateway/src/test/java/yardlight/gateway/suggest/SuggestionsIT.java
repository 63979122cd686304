package yardlight.gateway.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;

/** Readings that a box posted are replayed as the point is set up and otherwise, through the whole gateway. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class SuggestionsIT {

    private static final String SETUP = """
            sites: [{id: mesa-9, name: Mesa 9, zone: America/Chicago, ladder: night}]
            boxes: [{id: mesa-9-box, site: mesa-9}]
            points: [{id: water-tank, site: mesa-9, name: WATER TANK, unit: ft, limits: {high: 16}}]
            contacts:
              - {id: ana, name: Ana Ruelas, zone: America/Chicago, lines: [{channel: mail, address: ana@ranch.example}]}
            ladders: [{id: night, rungs: [{call: [ana], wait: PT5M}]}]
            """;

    private final Web web;

    SuggestionsIT(@LocalServerPort int port) {
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        registry.add("yardlight.allowance.burst", () -> "100000");
    }

    @Test
    void one_minute_above_the_limit_each_hour_calls_each_hour_and_not_at_all_with_a_delay_of_five_minutes() {
        assertThat(web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner())
                        .statusCode())
                .isEqualTo(200);
        String key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
        HttpResponse<String> posted =
                web.post("/api/v1/readings", "text/csv", csv(14), "Authorization", "Bearer " + key);
        assertThat(posted.statusCode()).as(posted.body()).isEqualTo(202);

        JsonNode found = Web.json(web.get("/api/v1/suggestions?site=mesa-9&point=water-tank", Web.owner()));

        assertThat(found.get("readings").asInt()).isEqualTo(14 * 60);
        JsonNode asIs = found.get("suggestions").get(0);
        assertThat(asIs.get("asIs").asBoolean()).isTrue();
        assertThat(asIs.get("onDelay").asString()).isEqualTo("PT0S");
        assertThat(asIs.get("count").asInt()).isEqualTo(14);
        assertThat(asIs.get("calls").get(0).get("condition").asString()).isEqualTo("high");
        for (JsonNode one : found.get("suggestions")) {
            if (one.get("onDelay").asString().equals("PT5M")) {
                assertThat(one.get("count").asInt()).isZero();
            }
        }
        String page =
                web.get("/sites/mesa-9/points/water-tank/replay", Web.owner()).body();
        assertThat(page).contains("840 readings.", "Called at once", "14 calls", "Called after 5 min", "0 calls");
    }

    @Test
    void a_point_that_is_not_set_up_is_not_there_and_both_names_are_needed() {
        assertThat(web.get("/api/v1/suggestions?site=mesa-9&point=nothing", Web.owner())
                        .statusCode())
                .isEqualTo(404);
        assertThat(web.get("/api/v1/suggestions?site=mesa-9", Web.owner()).body())
                .contains("\"parameter\":\"point\"", "must be there");
    }

    private static String csv(int hours) {
        Instant from = Instant.now().truncatedTo(ChronoUnit.HOURS).minus(hours, ChronoUnit.HOURS);
        var lines = new StringBuilder("point,value,unit,at\n");
        for (int minute = 0; minute < hours * 60; minute++) {
            lines.append("water-tank,")
                    .append(minute % 60 == 30 ? "16.5" : "12.25")
                    .append(",ft,")
                    .append(from.plusSeconds(60L * minute))
                    .append('\n');
        }
        return lines.toString();
    }
}
