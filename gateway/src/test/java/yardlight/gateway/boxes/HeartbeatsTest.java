package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;

@GatewayTest
class HeartbeatsTest {

    private static final String JSON = "application/json";

    private final Doors doors;
    private final FakeLane lane;

    HeartbeatsTest(Doors doors, FakeLane lane) {
        this.doors = doors;
        this.lane = lane;
        lane.clear();
    }

    @Test
    void may_say_nothing_at_all() {
        MvcTestResult result = post("application/x-www-form-urlencoded", "");

        assertThat(result).hasStatus(202).bodyJson().isStrictlyEqualTo("""
                {"received": "2026-11-25T08:13:00Z", "next": "PT1M"}
                """);
        assertThat(lane.heartbeats).containsExactly(Heartbeat.BARE);
    }

    @Test
    void are_handed_over_field_by_field() {
        post(JSON, """
                {"uptime": 86400, "feeds": {"pump": true, "wells": false}, "battery": 12.6, "signal": -97,
                 "at": "2026-11-25T08:12:00Z", "temperature": 3}
                """);

        Heartbeat heard = lane.heartbeats.get(0);
        assertThat(heard.uptime()).contains(Duration.ofDays(1));
        assertThat(heard.feeds()).isEqualTo(Map.of("pump", true, "wells", false));
        assertThat(heard.battery()).contains(12.6);
        assertThat(heard.signal()).contains(-97.0);
        assertThat(heard.at()).contains(Instant.parse("2026-11-25T08:12:00Z"));
    }

    @Test
    void may_count_their_uptime_in_parts_of_seconds() {
        assertThat(post(JSON, "{\"uptime\": 12.5}")).hasStatus(202);

        assertThat(lane.heartbeats.get(0).uptime()).contains(Duration.ofSeconds(12));
    }

    @Test
    void that_are_refused_are_signs_of_life_all_the_same() {
        await().untilAsserted(() -> {
            assertThat(post(JSON, "{")).hasStatus(400);
            assertThat(lane.signs).isNotEmpty();
        });
    }

    @Test
    void with_an_impossible_time_are_taken_without_it() {
        MvcTestResult result = post(JSON, "{\"at\": \"1970-01-01T00:00:10Z\"}");

        assertThat(result).hasStatus(202).bodyJson().hasPath("$.note");
        assertThat(lane.heartbeats.get(0).at()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"uptime\": -1} | #/uptime",
                "{\"uptime\": -0.5} | #/uptime",
                "{\"uptime\": 1000000000} | #/uptime",
                "{\"uptime\": \"long\"} | #/uptime",
                "{\"feeds\": true} | #/feeds",
                "{\"feeds\": {\"pump\": \"on\"}} | #/feeds/pump",
                "{\"feeds\": {\"Pump 1\": true}} | #/feeds/Pump%201",
                "{\"feeds\": {\"a/b\": true}} | #/feeds/a~1b",
                "{\"battery\": \"full\"} | #/battery",
                "{\"signal\": []} | #/signal",
                "{\"at\": 5} | #/at",
                "[] | #"
            })
    void that_are_wrong_are_answered_with_a_pointer(String body, String pointer) {
        MvcTestResult result = post(JSON, body);

        assertThat(result)
                .hasStatus(422)
                .bodyJson()
                .extractingPath("$.errors[*].pointer")
                .isEqualTo(List.of(pointer));
        assertThat(lane.heartbeats).isEmpty();
    }

    private MvcTestResult post(String type, String body) {
        return doors.post("/api/v1/heartbeats", type, body);
    }
}
