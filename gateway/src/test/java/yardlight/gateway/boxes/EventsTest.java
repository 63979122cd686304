package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.lane.LaneBusy;

@GatewayTest
class EventsTest {

    private static final String JSON = "application/json";
    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String GOOD = "{\"point\":\"water-tank\",\"condition\":\"high-high\",\"state\":\"active\"}";

    private final Doors doors;
    private final FakeLane lane;

    EventsTest(Doors doors, FakeLane lane) {
        this.doors = doors;
        this.lane = lane;
        lane.clear();
    }

    @Test
    void are_handed_over_field_by_field() {
        MvcTestResult result = post(JSON, """
                {"id": "m9-17", "point": "water-tank", "condition": "high-high", "state": "active",
                 "priority": "critical", "value": 18.40, "limit": 18.0, "unit": "ft",
                 "at": "2026-11-25T02:12:58-06:00", "text": "float\\tswitch ", "firmware": {"any": ["thing"]}}
                """);

        assertThat(result).hasStatus(202);
        assertThat(lane.events).hasSize(1);
        assertThat(lane.events.get(0).id()).contains("m9-17");
        Report report = lane.events.get(0).report();
        assertThat(report.key()).isEqualTo(new AlarmKey("mesa-9", "water-tank", "high-high"));
        assertThat(report.box()).contains("mesa-9-box");
        assertThat(report.active()).isTrue();
        assertThat(report.priority()).contains(Priority.CRITICAL);
        assertThat(report.measured().value()).contains(new BigDecimal("18.40"));
        assertThat(report.measured().limit()).contains(new BigDecimal("18.0"));
        assertThat(report.measured().unit()).contains("ft");
        assertThat(report.measured().text()).contains("float switch");
        assertThat(report.at()).isEqualTo(Instant.parse("2026-11-25T08:12:58Z"));
        assertThat(report.declared()).isTrue();
    }

    @Test
    void are_answered_in_the_form_of_the_contract() {
        MvcTestResult result = post(JSON, GOOD.replace("{", "{\"id\":\"a1\","));

        assertThat(result).hasContentType(JSON).bodyJson().isStrictlyEqualTo("""
                {"received": "2026-11-25T08:13:00Z",
                 "results": [{"id": "a1", "outcome": "occurred", "alarm": "mesa-9.water-tank.high-high.1"}]}
                """);
    }

    @Test
    void without_a_time_happen_when_they_arrive() {
        post(JSON, GOOD);

        assertThat(lane.events.get(0).report().at()).isEqualTo(TestGateway.NOW);
        assertThat(lane.events.get(0).report().declared()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25T08:13:01Z, at is in the future; the time received is used instead",
        "2019-12-31T23:59:59Z, at is before 2020; the time received is used instead"
    })
    void with_an_impossible_time_happen_when_they_arrive_and_the_box_is_told(String at, String note) {
        MvcTestResult result = post(JSON, GOOD.replace("{", "{\"at\":\"" + at + "\","));

        assertThat(result)
                .hasStatus(202)
                .bodyJson()
                .extractingPath("$.results[0].note")
                .isEqualTo(note);
        assertThat(lane.events.get(0).report().at()).isEqualTo(TestGateway.NOW);
        assertThat(lane.events.get(0).report().declared()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"2026-11-25T08:13:00Z", "2020-01-01T00:00:00Z"})
    void at_the_edges_of_belief_happen_when_the_box_says(String at) {
        MvcTestResult result = post(JSON, GOOD.replace("{", "{\"at\":\"" + at + "\","));

        assertThat(result).bodyJson().doesNotHavePath("$.results[0].note");
        assertThat(lane.events.get(0).report().at()).isEqualTo(at);
        assertThat(lane.events.get(0).report().declared()).isTrue();
    }

    @Test
    void may_come_in_an_array_and_keep_their_order() {
        String second = "{\"point\":\"separator\",\"condition\":\"low\",\"state\":\"normal\"}";

        MvcTestResult result = post(JSON, "[" + GOOD + "," + second + "]");

        assertThat(result)
                .hasStatus(202)
                .bodyJson()
                .extractingPath("$.results.length()")
                .isEqualTo(2);
        assertThat(lane.events)
                .extracting(event -> event.report().key().point())
                .containsExactly("water-tank", "separator");
        assertThat(lane.events.get(1).report().active()).isFalse();
    }

    @Test
    void may_be_five_hundred_in_an_array() {
        assertThat(post(JSON, "[" + (GOOD + ",").repeat(499) + GOOD + "]")).hasStatus(202);
        assertThat(lane.events).hasSize(500);
    }

    @Test
    void may_be_five_thousand_lines() {
        assertThat(post("application/x-ndjson", (GOOD + "\n").repeat(5_000))).hasStatus(202);
        assertThat(lane.events).hasSize(5_000);
    }

    @Test
    void in_lines_fail_one_by_one() {
        MvcTestResult result = post(
                "application/x-ndjson", GOOD + "\n\n{\"point\":\"a\"\r\n" + GOOD.replace("active", "on") + "\n" + GOOD);

        assertThat(result).hasStatus(202);
        assertThat(lane.events).hasSize(2);
        assertThat(result)
                .bodyJson()
                .extractingPath("$.results[*].outcome")
                .asArray()
                .hasSize(2);
        assertThat(result).bodyJson().extractingPath("$.results.length()").isEqualTo(4);
        assertThat(result)
                .bodyJson()
                .extractingPath("$.results[1].errors[0].pointer")
                .isEqualTo("#");
        assertThat(result)
                .bodyJson()
                .extractingPath("$.results[2].errors[0].pointer")
                .isEqualTo("#/state");
        assertThat(result)
                .bodyJson()
                .extractingPath("$.results[2].errors[0].detail")
                .isEqualTo("must be active or normal: on");
    }

    @Test
    void may_come_as_form_fields() {
        MvcTestResult result = post(
                FORM, "point=water-tank&condition=high-high&state=active&value=18.4&unit=ft&text=float+switch&limit=");

        assertThat(result).hasStatus(202);
        Report report = lane.events.get(0).report();
        assertThat(report.measured().value()).contains(new BigDecimal("18.4"));
        assertThat(report.measured().limit()).isEmpty();
        assertThat(report.measured().text()).contains("float switch");
    }

    @Test
    void may_be_json_that_curl_labels_as_a_form() {
        assertThat(post(FORM, GOOD)).hasStatus(202);
        assertThat(lane.events).hasSize(1);
    }

    @Test
    void are_refused_for_a_while_when_the_lane_is_busy() {
        lane.trouble = Optional.of(new LaneBusy("full", null));

        assertThat(post(JSON, GOOD))
                .hasStatus(503)
                .hasContentType("application/problem+json")
                .hasHeader("Retry-After", "2");
    }

    private MvcTestResult post(String type, String body) {
        return doors.post("/api/v1/events", type, body);
    }
}
