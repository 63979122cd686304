package yardlight.gateway.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.escalation.Fixtures;
import yardlight.escalation.limit.Current;
import yardlight.escalation.limit.Rules;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.lane.LaneBusy;
import yardlight.gateway.lane.OtherUnit;
import yardlight.gateway.wire.Posts;

@GatewayTest
class ReadingsTest {

    private static final String PATH = "/api/v1/readings";
    private static final String JSON = "application/json";
    private static final String LINES = "application/x-ndjson";
    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String CSV = "text/csv";
    private static final String GOOD = "{\"point\":\"level\",\"value\":12.4,\"unit\":\"ft\"}";

    private final Doors doors;
    private final FakeLane lane;
    private final TestGateway.InMemorySetup setup;
    private final Posts posts;

    ReadingsTest(Doors doors, FakeLane lane, TestGateway.InMemorySetup setup, Posts posts) {
        this.doors = doors;
        this.lane = lane;
        this.setup = setup;
        this.posts = posts;
        lane.clear();
        setup.set(with(point("level", Optional.of("ft"), Rules.NONE)));
    }

    @AfterEach
    void leave_the_setup_as_it_was() {
        setup.set(Fixtures.theSetup());
    }

    @Test
    void are_handed_over_field_by_field() {
        MvcTestResult result = post(JSON, """
                {"readings": [{"point": "level", "value": 12.40, "unit": "ft", "at": "2026-11-25T02:12:58.0009-06:00", "firmware": 7},
                              {"point": "separator-psi", "value": -3}]}
                """);

        assertThat(result).hasStatus(202);
        assertThat(readings())
                .containsExactly(
                        new Reading("mesa-9", "level", 12.4, Instant.parse("2026-11-25T08:12:58Z")),
                        new Reading("mesa-9", "separator-psi", -3, TestGateway.NOW));
        assertThat(lane.readings.get(0).unit()).contains("ft");
        assertThat(lane.readings.get(1).unit()).isEmpty();
    }

    @Test
    void are_answered_with_what_became_of_them_and_no_more_than_there_is_to_say() {
        MvcTestResult result = post(
                JSON,
                "[" + GOOD + "," + at("2030-01-01T00:00:00Z") + ","
                        + at(TestGateway.NOW.minus(Duration.ofDays(401)).toString()) + "]");

        assertThat(result).hasStatus(202).hasContentType(JSON).bodyJson().isStrictlyEqualTo("""
                {"received": "2026-11-25T08:13:00Z", "kept": 2, "repeated": 0, "tooOld": 1,
                 "results": [{"reading": 1, "outcome": "kept", "note": "at is in the future; the time received is used instead"},
                             {"reading": 2, "outcome": "too-old"}]}
                """);
    }

    @Test
    void may_be_one_alone_in_any_form() {
        assertThat(post(JSON, GOOD))
                .hasStatus(202)
                .bodyJson()
                .extractingPath("$.kept")
                .isEqualTo(1);
        assertThat(post(FORM, "point=level&value=12.4&unit=&at=2026-11-25T08:00:00Z"))
                .hasStatus(202);
        assertThat(post(FORM, GOOD)).hasStatus(202);
        assertThat(readings()).hasSize(3).allMatch(one -> one.value() == 12.4);
    }

    @Test
    void in_lines_fail_one_by_one_with_a_result_for_each() {
        MvcTestResult result = post(LINES, GOOD + "\n\n{\"point\":\"a\"\n" + GOOD.replace("12.4", "NaN") + "\n" + GOOD);

        assertThat(result).hasStatus(202).bodyJson().extractingPath("$.kept").isEqualTo(2);
        assertThat(result).bodyJson().extractingPath("$.results.length()").isEqualTo(4);
        assertThat(result).bodyJson().extractingPath("$.results[0].outcome").isEqualTo("kept");
        assertThat(result)
                .bodyJson()
                .extractingPath("$.results[1].errors[0].pointer")
                .isEqualTo("#");
        assertThat(lane.readings).hasSize(2);
    }

    @Test
    void may_come_as_lines_of_values_under_a_line_of_names() {
        MvcTestResult result = post(
                CSV,
                "at,point,value,unit\r\n2026-11-25T08:00:00Z,level,12.4,ft\r\n2026-11-25T08:01:00Z,level,,ft\r\n"
                        + ",level,148.8,in\r\n");

        assertThat(result).hasStatus(202).bodyJson().extractingPath("$.kept").isEqualTo(2);
        assertThat(result).bodyJson().extractingPath("$.results.length()").isEqualTo(1);
        assertThat(result).bodyJson().extractingPath("$.results[0].reading").isEqualTo(1);
        assertThat(result)
                .bodyJson()
                .extractingPath("$.results[0].errors[0].pointer")
                .isEqualTo("#/value");
        assertThat(readings())
                .containsExactly(
                        new Reading("mesa-9", "level", 12.4, Instant.parse("2026-11-25T08:00:00Z")),
                        new Reading("mesa-9", "level", 12.4, TestGateway.NOW));
    }

    @Test
    void may_be_five_thousand_lines_of_three_days() {
        var csv = new StringBuilder("point,value,unit,at\n");
        Instant from = TestGateway.NOW.minus(Duration.ofDays(3));
        for (int i = 0; i < 5_000; i++) {
            csv.append("level,12.4,ft,").append(from.plusSeconds(50L * i)).append('\n');
        }

        assertThat(post(CSV, csv.toString())).hasStatus(202);
        assertThat(lane.readings).hasSize(5_000);
        assertThat(post(CSV, csv + "level,1,ft,\n")).hasStatus(413);
        assertThat(post(JSON, "[" + (GOOD + ",").repeat(2_000) + GOOD + "]")).hasStatus(413);
    }

    @ParameterizedTest
    @CsvSource({"m, 3.77952, 12.4", "in, 148.8, 12.4", "FT, 12.4, 12.4"})
    void are_converted_into_the_unit_of_their_point(String unit, String said, double value) {
        post(JSON, "{\"point\":\"level\",\"value\":" + said + ",\"unit\":\"" + unit + "\"}");

        assertThat(readings()).extracting(Reading::value).containsExactly(value);
        assertThat(lane.readings.get(0).kept()).isEqualTo(value);
        assertThat(lane.readings.get(0).unit()).contains("ft");
    }

    @Test
    void in_a_unit_that_does_not_fit_are_refused_with_field_rule_and_value() {
        assertThat(post(JSON, "{\"readings\":[" + GOOD + "," + GOOD.replace("\"ft\"", "\"psi\"") + "]}"))
                .hasStatus(422)
                .bodyJson()
                .extractingPath("$.errors[0]")
                .isEqualTo(java.util.Map.of("pointer", "#/readings/1/unit", "detail", "must fit the point's, ft: psi"));
        assertThat(post(JSON, GOOD.replace("ft", "cubits"))).hasStatus(422);
        assertThat(lane.readings).isEmpty();
    }

    @Test
    void in_a_unit_that_nobody_knows_are_kept_in_it() {
        post(JSON, "{\"point\":\"pump-jack\",\"value\":7,\"unit\":\"strokes/min\"}");

        assertThat(lane.readings.get(0).unit()).contains("strokes/min");
        assertThat(readings()).extracting(Reading::value).containsExactly(7.0);
    }

    @Test
    void of_a_current_loop_are_scaled_and_not_cut_off_at_its_ends() {
        var loop = new Current(java.math.BigDecimal.ZERO, java.math.BigDecimal.valueOf(20));
        Rules rules = new Rules(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(loop));
        setup.set(with(point("level", Optional.of("ft"), rules)));

        post(LINES, """
                {"point":"level","value":4}
                {"point":"level","value":12,"unit":"mA"}
                {"point":"level","value":0.0205,"unit":"A"}
                {"point":"level","value":3.6,"unit":"mA"}
                {"point":"level","value":7.5,"unit":"ft"}
                """);

        assertThat(readings()).extracting(Reading::value).containsExactly(0.0, 10.0, 20.625, -0.5, 7.5);
        assertThat(lane.readings).allMatch(one -> one.unit().equals(Optional.of("ft")));
    }

    @Test
    void look_once_more_when_somebody_else_was_first_with_another_unit() {
        lane.trouble = Optional.of(new OtherUnit("level"));
        lane.troubleOnce = true;

        assertThat(post(JSON, GOOD)).hasStatus(202);
        assertThat(lane.readings).hasSize(1);
    }

    @Test
    void are_not_answered_with_202_when_they_were_not_stored() {
        lane.trouble = Optional.of(new LaneBusy("no", null));

        assertThat(post(JSON, GOOD)).hasStatus(503).containsHeader("Retry-After");
    }

    @Test
    void are_seen_by_whoever_looks_at_the_box() {
        posts.look("mesa-9-box");

        post(JSON, "{\"readings\":[" + (GOOD + ",").repeat(4) + GOOD + "]}");
        post(JSON, GOOD.replace("12.4", "true"));

        assertThat(posts.look("mesa-9-box").subList(0, 2))
                .extracting(one -> one.status() + " " + one.door() + ": " + one.said() + ": " + one.answer())
                .containsExactly(
                        "422 readings: : value must be a number of at most 18 digits, 9 of them after the point: true",
                        "202 readings: level 12.4 ft; level 12.4 ft; level 12.4 ft; +2: kept ×5");
    }

    @Test
    void are_taken_from_boxes_only() {
        assertThat(doors.as("owner", HttpMethod.POST, PATH)
                        .contentType(JSON)
                        .content(GOOD)
                        .exchange())
                .hasStatus(401);
        assertThat(doors.stranger(HttpMethod.POST, PATH)
                        .contentType(JSON)
                        .content(GOOD)
                        .exchange())
                .hasStatus(401);
        assertThat(doors.stranger(HttpMethod.GET, PATH).exchange()).hasStatus(401);
        assertThat(lane.readings).isEmpty();
    }

    private List<Reading> readings() {
        return lane.readings.stream().map(one -> one.reading()).toList();
    }

    private static String at(String time) {
        return GOOD.replace("{", "{\"at\":\"" + time + "\",");
    }

    private static Point point(String id, Optional<String> unit, Rules rules) {
        Point plain = Point.unknown(id, "mesa-9");
        return new Point(
                id,
                "mesa-9",
                plain.name(),
                unit,
                plain.priority(),
                plain.timing(),
                plain.suppressedWhile(),
                true,
                rules);
    }

    private static Setup with(Point point) {
        Setup made = Fixtures.theSetup();
        var points = new java.util.ArrayList<>(made.points());
        points.add(point);
        return new Setup(
                List.copyOf(made.sites().values()),
                List.copyOf(made.boxes().values()),
                points,
                List.copyOf(made.contacts().values()),
                List.copyOf(made.rosters().values()),
                List.copyOf(made.ladders().values()));
    }

    private MvcTestResult post(String type, String body) {
        return doors.post(PATH, type, body);
    }
}
