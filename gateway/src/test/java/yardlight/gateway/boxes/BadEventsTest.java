package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;

@GatewayTest
class BadEventsTest {

    private static final String JSON = "application/json";
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private final Doors doors;
    private final FakeLane lane;

    BadEventsTest(Doors doors, FakeLane lane) {
        this.doors = doors;
        this.lane = lane;
        lane.clear();
    }

    @AfterEach
    void store_nothing() {
        assertThat(lane.events).isEmpty();
    }

    static Stream<Arguments> fields() {
        return Stream.of(
                one("{}", "#/point", "#/condition", "#/state"),
                one("{\"point\":null,\"condition\":\"high\",\"state\":\"active\"}", "#/point"),
                one(with("point", "5"), "#/point"),
                one(with("point", "\"Water Tank\""), "#/point"),
                one(with("point", "\"-tank\""), "#/point"),
                one(with("point", "\"" + "a".repeat(65) + "\""), "#/point"),
                one(with("point", "\"\""), "#/point"),
                one(with("point", "[\"water-tank\"]"), "#/point"),
                one(with("condition", "true"), "#/condition"),
                one(with("condition", "\"high/high\""), "#/condition"),
                one(with("state", "\"on\""), "#/state"),
                one(with("state", "\"ACTIVE\""), "#/state"),
                one(with("state", "1"), "#/state"),
                one(with("id", "17"), "#/id"),
                one(with("id", "\"\""), "#/id"),
                one(with("id", "\"" + "x".repeat(65) + "\""), "#/id"),
                one(with("id", "\"caf\u00e9\""), "#/id"),
                one(with("id", "\"a\\u0000b\""), "#/id"),
                one(with("priority", "\"urgent\""), "#/priority"),
                one(with("priority", "3"), "#/priority"));
    }

    static Stream<Arguments> valuesAndShapes() {
        return Stream.of(
                one(with("value", "\"18.4\""), "#/value"),
                one(with("value", "1e999999999"), "#/value"),
                one(with("value", "1e40"), "#/value"),
                one(with("value", "0.0000000001"), "#/value"),
                one(with("value", "1234567890123456789"), "#/value"),
                one(with("value", "[18.4]"), "#/value"),
                one(with("limit", "true"), "#/limit"),
                one(with("unit", "\"" + "f".repeat(17) + "\""), "#/unit"),
                one(with("unit", "5"), "#/unit"),
                one(with("at", "1764061980"), "#/at"),
                one(with("at", "\"2026-11-25\""), "#/at"),
                one(with("at", "\"2026-11-25T02:13:00\""), "#/at"),
                one(with("at", "\"2026-13-25T02:13:00Z\""), "#/at"),
                one(with("at", "\"yesterday\""), "#/at"),
                one(with("text", "\"" + "t".repeat(201) + "\""), "#/text"),
                one(with("text", "{\"a\":1}"), "#/text"),
                one(with("text", "\"a\\u0000b\""), "#/text"),
                one(with("text", "\"\\ud800\""), "#/text"),
                one("{\"point\":\"a\",\"point\":\"b\",\"condition\":\"high\",\"state\":\"active\"}", "#/point"),
                one(
                        "{\"point\":\"A\",\"condition\":\"B\",\"state\":\"C\",\"value\":\"D\"}",
                        "#/point",
                        "#/condition",
                        "#/state",
                        "#/value"),
                one("[]", "#"),
                one("5", "#"),
                one("\"text\"", "#"),
                one("null", "#"),
                one("[1,null]", "#/0", "#/1"),
                one(
                        "[" + good() + "," + with("state", "\"on\"") + "," + good() + "," + with("value", "\"x\"")
                                + "]",
                        "#/1/state",
                        "#/3/value"));
    }

    @ParameterizedTest
    @MethodSource({"fields", "valuesAndShapes"})
    void are_answered_with_a_pointer_to_each_field(String body, List<String> pointers) {
        MvcTestResult result = doors.post("/api/v1/events", JSON, body);

        assertThat(result).hasStatus(422).hasContentType("application/problem+json");
        assertThat(pointers(result)).containsExactlyElementsOf(pointers);
    }

    static Stream<Arguments> unreadable() {
        return Stream.of(
                Arguments.of(JSON, "", 400),
                Arguments.of(JSON, "   ", 400),
                Arguments.of(JSON, "{", 400),
                Arguments.of(JSON, "{\"point\":}", 400),
                Arguments.of(JSON, "{'point':'a'}", 400),
                Arguments.of(JSON, good() + good(), 400),
                Arguments.of(JSON, "{\"value\":NaN}", 400),
                Arguments.of(JSON, "{\"value\":" + "9".repeat(100) + "}", 400),
                Arguments.of(JSON, "[".repeat(5_000), 400),
                Arguments.of(JSON, "{\"a\":".repeat(5_000), 400),
                Arguments.of(JSON, "{\"text\":\"" + "x".repeat(70_000) + "\"}", 400),
                Arguments.of("text/plain", good(), 415),
                Arguments.of("application/xml", "<event/>", 415),
                Arguments.of("application/yaml", "point: a", 415),
                Arguments.of("application/json;charset=UTF-16", good(), 415),
                Arguments.of(JSON, " ".repeat(1024 * 1024) + good(), 413),
                Arguments.of(JSON, "[" + (good() + ",").repeat(500) + good() + "]", 413),
                Arguments.of("application/x-ndjson", "\n".repeat(2 * 1024 * 1024) + good(), 413),
                Arguments.of("application/x-ndjson", (good() + "\n").repeat(5_001), 413),
                Arguments.of("application/x-www-form-urlencoded", "point=%zz", 400));
    }

    @ParameterizedTest
    @MethodSource("unreadable")
    void are_refused_as_a_whole(String type, String body, int status) {
        MvcTestResult result = doors.post("/api/v1/events", type, body);

        assertThat(result).hasStatus(status).hasContentType("application/problem+json");
        assertThat(json(result).get("status").asInt()).isEqualTo(status);
        assertThat(text(result)).doesNotContain("Exception", "jackson", "yardlight.", "org.", "java.");
    }

    @Test
    void say_in_which_line_the_json_breaks() {
        MvcTestResult result = doors.post("/api/v1/events", JSON, "{\n  \"point\": oops\n}");

        assertThat(json(result).get("detail").asString())
                .startsWith("the body cannot be read as JSON: line 2, column ");
    }

    @Test
    void must_not_be_other_than_utf_8() {
        byte[] latin = {'{', '"', 't', '"', ':', '"', (byte) 0xE9, '"', '}'};

        MvcTestResult result = doors.post("/api/v1/events", JSON, latin);

        assertThat(result).hasStatus(400);
    }

    @Test
    void of_a_form_are_named_like_those_of_json() {
        MvcTestResult result = doors.post(
                "/api/v1/events", "application/x-www-form-urlencoded", "point=water-tank&state=active&value=high");

        assertThat(result).hasStatus(422);
        assertThat(pointers(result)).containsExactly("#/condition", "#/value");
    }

    @Test
    void that_fill_all_lines_are_a_problem_and_not_a_success() {
        MvcTestResult result = doors.post("/api/v1/events", "application/x-ndjson", "{}\nnot json\n");

        assertThat(result).hasStatus(422);
        assertThat(pointers(result)).containsExactly("#/0/point", "#/0/condition", "#/0/state", "#/1");
    }

    private static Arguments one(String body, String... pointers) {
        return Arguments.of(body, List.of(pointers));
    }

    private static String good() {
        return "{\"point\":\"water-tank\",\"condition\":\"high-high\",\"state\":\"active\"}";
    }

    /** A good event with one field as given. */
    private static String with(String field, String value) {
        String others = Stream.of("\"point\":\"water-tank\"", "\"condition\":\"high-high\"", "\"state\":\"active\"")
                .filter(one -> !one.startsWith("\"" + field + "\""))
                .reduce("", (left, right) -> left + "," + right);
        return "{\"" + field + "\":" + value + others + "}";
    }

    private static List<String> pointers(MvcTestResult result) {
        return json(result)
                .get("errors")
                .valueStream()
                .map(error -> error.get("pointer").asString())
                .toList();
    }

    private static JsonNode json(MvcTestResult result) {
        return MAPPER.readTree(text(result));
    }

    private static String text(MvcTestResult result) {
        return new String(result.getResponse().getContentAsByteArray(), java.nio.charset.StandardCharsets.UTF_8);
    }
}
