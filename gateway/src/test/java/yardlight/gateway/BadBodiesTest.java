package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Bad bodies at the doors of people and providers: each mistake is named, nothing is decided. */
@GatewayTest
class BadBodiesTest {

    private static final String ACKNOWLEDGE = "/api/v1/alarms/none/acknowledge";

    private final Doors doors;
    private final FakeLane lane;

    BadBodiesTest(Doors doors, FakeLane lane) {
        this.doors = doors;
        this.lane = lane;
        lane.clear();
    }

    @AfterEach
    void decide_nothing() {
        assertThat(lane.decided).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "POST | /api/v1/alarms/none/acknowledge | {\"contact\": \"nobody\"} | #/contact",
                "POST | /api/v1/alarms/none/acknowledge | {\"contact\": 5} | #/contact",
                "POST | /api/v1/alarms/none/acknowledge | {\"note\": []} | #/note",
                "POST | /api/v1/alarms/none/acknowledge | {\"notes\": \"x\"} | #/notes",
                "POST | /api/v1/alarms/none/acknowledge | [] | #",
                "POST | /api/v1/alarms/none/shelve | {} | #/for #/reason",
                "POST | /api/v1/alarms/none/shelve | {\"for\": \"2 hours\", \"reason\": \"x\"} | #/for",
                "POST | /api/v1/alarms/none/shelve | {\"for\": \"PT0S\", \"reason\": \"x\"} | #/for",
                "POST | /api/v1/alarms/none/shelve | {\"for\": \"P8D\", \"reason\": \"x\"} | #/for",
                "POST | /api/v1/alarms/none/shelve | {\"for\": \"PT2H\", \"reason\": \"\"} | #/reason",
                "POST | /api/v1/alarms/none/unshelve | {\"why\": \"x\"} | #/why",
                "POST | /api/v1/alarms/none/reset | {\"force\": true} | #/force",
                "POST | /api/v1/rehearsals | {} | #/site #/point #/condition",
                "POST | /api/v1/rehearsals | {\"site\": \"moon\", \"point\": \"A\", \"condition\": \"b c\"}"
                        + " | #/site #/point #/condition",
                "POST | /api/v1/rehearsals | {\"site\": \"mesa-9\", \"point\": \"a\", \"condition\": \"b\","
                        + " \"at\": \"night\", \"priority\": \"big\", \"answers\": [{\"contact\": \"zoe\"},"
                        + " {\"contact\": \"ben\", \"after\": \"-PT1M\"}]}"
                        + " | #/priority #/at #/answers/0/after #/answers/0/contact #/answers/1/after",
                "POST | /api/v1/rehearsals | {\"site\": \"mesa-9\", \"point\": \"a\", \"condition\": \"b\","
                        + " \"setup\": {\"sites\": [{\"id\": \"x\"}]}}"
                        + " | #/setup/sites/0/zone #/setup/sites/0/ladder",
                "POST | /api/v1/rehearsals | {\"site\": \"mesa-9\", \"point\": \"a\", \"condition\": \"b\","
                        + " \"answers\": [{\"contact\": \"ben\", \"after\": \"PT9223372036854775807S\"}]}"
                        + " | #/answers/0/after",
                "PUT | /api/v1/logins/zoe | {} | #/role",
                "PUT | /api/v1/logins/zoe | {\"role\": \"boss\", \"password\": \"short\"} | #/role #/password",
                "PUT | /api/v1/setup | {\"sites\": {}} | #/sites"
            })
    void of_people_are_named_field_by_field(String method, String path, String body, String pointers) {
        MvcTestResult result = doors.as("owner", HttpMethod.valueOf(method), path)
                .contentType("application/json")
                .content(body)
                .exchange();

        assertThat(result).hasStatus(422).hasContentType("application/problem+json");
        assertThat(result).bodyJson().extractingPath("$.errors[*].pointer").isEqualTo(List.of(pointers.split(" ")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "application/json | { | 400",
                "application/json | not json | 400",
                "text/plain | {} | 415",
                "application/x-www-form-urlencoded | note=x | 415"
            })
    void of_people_that_cannot_be_read_are_refused(String type, String body, int status) {
        assertThat(doors.as("owner", HttpMethod.POST, ACKNOWLEDGE)
                        .contentType(type)
                        .content(body))
                .hasStatus(status)
                .hasContentType("application/problem+json");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{} | 422",
                "{\"from\": \"+15755550101\"} | 422",
                "{\"from\": 5, \"text\": \"ok\"} | 422",
                "{\"from\": \"+15755550101\", \"text\": \"ok\", \"provider\": \"extra\"} | 200"
            })
    void of_providers_are_refused_too(String body, int status) {
        assertThat(doors.stranger(HttpMethod.POST, "/api/v1/replies")
                        .header(HttpHeaders.AUTHORIZATION, "Bearer " + GatewayTest.REPLIES_KEY)
                        .contentType("application/json")
                        .content(body))
                .hasStatus(status);
    }
}
