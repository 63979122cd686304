package yardlight.gateway.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UnsupportedEncodingException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Priority;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.PastRows;
import yardlight.gateway.TestGateway;

/** A night in the record: the ladder is climbed up to Ben, who answers after two minutes; played again through the doors. */
@GatewayTest
@TestPropertySource(properties = "spring.datasource.url=jdbc:h2:mem:nights;DB_CLOSE_DELAY=-1")
class NightsDoorsTest {

    private static final String NIGHT = "\"from\": \"2026-11-23T18:00:00Z\", \"to\": \"2026-11-24T18:00:00Z\"";
    private static final String BEN_FIRST = """
            , "setup": {
              "sites": [{"id": "mesa-9", "name": "Mesa 9", "zone": "America/Chicago", "ladder": "night"}],
              "contacts": [{"id": "ana", "name": "Ana Ruelas", "zone": "America/Chicago",
                            "lines": [{"channel": "sms-mail", "address": "5755550101@txt.example"}]},
                           {"id": "ben", "name": "Ben Tully", "zone": "America/Chicago",
                            "lines": [{"channel": "sms-mail", "address": "5755550102@txt.example"}]}],
              "ladders": [{"id": "night", "rungs": [{"call": ["ben"], "wait": "PT5M"}]}]}
            """;

    private final Doors doors;
    private final JdbcTemplate jdbc;

    NightsDoorsTest(Doors doors, JdbcTemplate jdbc) {
        this.doors = doors;
        this.jdbc = jdbc;
    }

    @BeforeEach
    void the_night() {
        PastRows.forget(jdbc, "mesa-9");
        new PastRows(jdbc, Fixtures.theSetup(), "mesa-9")
                .night(TestGateway.NOW, 1, "02:13", "separator", Priority.HIGH, "ben", 2)
                .keep(TestGateway.NOW);
    }

    @Test
    void with_the_present_setup_it_is_what_it_was() throws UnsupportedEncodingException {
        JsonNode answer = json(post("hand", "{" + NIGHT + "}"));

        assertThat(answer.get("really")).isEqualTo(answer.get("would"));
        assertThat(answer.get("really").get("texts").asInt()).isEqualTo(5);
        assertThat(answer.get("really").get("atNight").asInt()).isEqualTo(5);
        assertThat(answer.get("really").get("longestWait").asString()).isEqualTo("PT17M");
        assertThat(answer.get("really").get("people").get(1).get("contact").asString())
                .isEqualTo("ben");
        assertThat(answer.get("really").get("lines")).hasSize(6);
        assertThat(answer.get("leftOut").asInt()).isZero();
    }

    @Test
    void with_another_ladder_ben_is_told_first_and_answers_after_two_minutes() throws UnsupportedEncodingException {
        JsonNode answer = json(post("hand", "{\"site\": \"mesa-9\", " + NIGHT + BEN_FIRST + "}"));

        assertThat(answer.get("would").get("texts").asInt()).isEqualTo(1);
        assertThat(answer.get("would").get("longestWait").asString()).isEqualTo("PT2M");
        JsonNode alarm = answer.get("alarms").get(0);
        assertThat(alarm.get("alarm").asString()).isEqualTo("mesa-9.past-separator.high.1");
        assertThat(alarm.get("really").get("answeredAt").asString()).isEqualTo("2026-11-24T08:30:00Z");
        assertThat(alarm.get("would").get("answeredAt").asString()).isEqualTo("2026-11-24T08:15:00Z");
        assertThat(alarm.get("would").get("answeredBy").asString()).isEqualTo("ben");
    }

    @Test
    void an_answer_can_be_tried() throws UnsupportedEncodingException {
        JsonNode answer =
                json(post("owner", "{" + NIGHT + ", \"answers\": [{\"contact\": \"ana\", \"after\": \"PT3M\"}]}"));

        assertThat(answer.get("would").get("texts").asInt()).isEqualTo(1);
        assertThat(answer.get("would").get("longestWait").asString()).isEqualTo("PT3M");
    }

    @Test
    void what_was_called_at_night_is_not_for_who_may_only_read() {
        assertThat(post("reader", "{" + NIGHT + "}")).hasStatus(403);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{} | #/from",
                "{\"from\": \"2026-11-24T18:00:00Z\", \"to\": \"2026-11-24T18:00:00Z\"} | #/from",
                "{\"from\": \"2025-10-01T18:00:00Z\", \"to\": \"2026-11-24T18:00:00Z\"} | #/from",
                "{\"from\": \"yesterday\", \"to\": \"2026-11-24T18:00:00Z\"} | #/from",
                "{\"site\": \"moon\", \"from\": \"2026-11-23T18:00:00Z\", \"to\": \"2026-11-24T18:00:00Z\"} | #/site",
                "{\"night\": 1, \"from\": \"2026-11-23T18:00:00Z\", \"to\": \"2026-11-24T18:00:00Z\"} | #/night",
            })
    void what_is_wrong_is_said_at_its_place(String body, String pointer) throws UnsupportedEncodingException {
        MvcTestResult answer = post("hand", body);

        assertThat(answer).hasStatus(422);
        assertThat(answer.getResponse().getContentAsString()).contains("\"" + pointer + "\"");
    }

    private MvcTestResult post(String login, String body) {
        return doors.as(login, HttpMethod.POST, "/api/v1/rehearsals/nights")
                .contentType("application/json")
                .content(body)
                .exchange();
    }

    private static JsonNode json(MvcTestResult answer) throws UnsupportedEncodingException {
        assertThat(answer).hasStatusOk();
        return new JsonMapper().readTree(answer.getResponse().getContentAsString());
    }
}
