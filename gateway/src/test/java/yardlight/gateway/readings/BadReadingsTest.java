package yardlight.gateway.readings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;

@GatewayTest
class BadReadingsTest {

    private static final String JSON = "application/json";

    private final Doors doors;
    private final FakeLane lane;

    BadReadingsTest(Doors doors, FakeLane lane) {
        this.doors = doors;
        this.lane = lane;
        lane.clear();
    }

    @AfterEach
    void store_nothing() {
        assertThat(lane.readings).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{} | #/point",
                "{\"point\":\"level\"} | #/value",
                "{\"value\":1} | #/point",
                "{\"point\":\"The Level\",\"value\":1} | #/point",
                "{\"point\":\"level\",\"value\":null} | #/value",
                "{\"point\":\"level\",\"value\":\"12.4\"} | #/value",
                "{\"point\":\"level\",\"value\":\"NaN\"} | #/value",
                "{\"point\":\"level\",\"value\":\"Infinity\"} | #/value",
                "{\"point\":\"level\",\"value\":1e300} | #/value",
                "{\"point\":\"level\",\"value\":1e999999999} | #/value",
                "{\"point\":\"level\",\"value\":1000000000000} | #/value",
                "{\"point\":\"level\",\"value\":-1e12} | #/value",
                "{\"point\":\"level\",\"value\":0.0000000001} | #/value",
                "{\"point\":\"level\",\"value\":[1]} | #/value",
                "{\"point\":\"level\",\"value\":1,\"unit\":7} | #/unit",
                "{\"point\":\"level\",\"value\":1,\"unit\":\"aaaaaaaaaaaaaaaaa\"} | #/unit",
                "{\"point\":\"level\",\"value\":1,\"unit\":\"f\\u0000t\"} | #/unit",
                "{\"point\":\"level\",\"value\":1,\"at\":1764061980} | #/at",
                "{\"point\":\"level\",\"value\":1,\"at\":\"yesterday\"} | #/at",
                "{\"point\":\"level\",\"point\":\"level\",\"value\":1} | #/point",
                "[{\"point\":\"level\",\"value\":1},{\"point\":\"level\"}] | #/1/value",
                "[{\"point\":\"level\",\"value\":1},7] | #/1",
                "{\"readings\":[{\"point\":\"level\",\"value\":1},{\"point\":\"level\"}]} | #/readings/1/value",
                "{\"readings\":[]} | #",
                "{\"readings\":7} | #/point",
                "[] | #",
                "7 | #"
            })
    void are_refused_as_a_whole_with_the_place(String body, String pointer) {
        assertThat(post(JSON, body))
                .hasStatus(422)
                .bodyJson()
                .extractingPath("$.errors[0].pointer")
                .isEqualTo(pointer);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"{\"point\":\"level\",\"value\":NaN}", "{\"point\":\"level\",\"value\":-Infinity}", "{", ""})
    void that_are_no_json_are_refused(String body) {
        assertThat(post(JSON, body)).hasStatus(400);
    }

    @Test
    void without_a_good_line_are_refused() {
        assertThat(post("application/x-ndjson", "{\"point\":\"level\",\"value\":NaN}\n7\n"))
                .hasStatus(422)
                .bodyJson()
                .extractingPath("$.errors.length()")
                .isEqualTo(2);
        assertThat(post("text/csv", "point,value\nlevel,high\n"))
                .hasStatus(422)
                .bodyJson()
                .extractingPath("$.errors[0].pointer")
                .isEqualTo("#/0/value");
        assertThat(post("text/csv", "point,value\n")).hasStatus(422);
        assertThat(post("text/csv", "")).hasStatus(400);
        assertThat(post("text/csv", "point,value\n\"level,1\n")).hasStatus(400);
    }

    @Test
    void in_another_form_are_refused_with_the_forms_there_are() {
        assertThat(post("application/xml", "<reading/>"))
                .hasStatus(415)
                .hasHeader(
                        "Accept",
                        "application/json, application/x-ndjson, application/x-www-form-urlencoded, text/csv");
    }

    private MvcTestResult post(String type, String body) {
        return doors.post("/api/v1/readings", type, body);
    }
}
