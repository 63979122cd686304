package yardlight.gateway.logins;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;

@GatewayTest
class LoginsTest {

    private final Doors doors;

    LoginsTest(Doors doors) {
        this.doors = doors;
    }

    @Test
    void with_a_made_password_show_it_once() throws Exception {
        MvcTestResult made = put("zoe", "{\"role\": \"hand\"}");

        assertThat(made).hasStatus(200);
        String password = JsonMapper.builder()
                .build()
                .readTree(made.getResponse().getContentAsString())
                .get("password")
                .asString();
        assertThat(statusAs("zoe", password)).isEqualTo(200);
        assertThat(doors.as("owner", HttpMethod.GET, "/api/v1/logins"))
                .bodyText()
                .contains("\"zoe\"")
                .doesNotContain(password, "$argon2");
    }

    @Test
    void with_a_given_password_do_not_show_it() {
        MvcTestResult made = put("yan", "{\"role\": \"reader\", \"password\": \"long enough for this\"}");

        assertThat(made).bodyJson().isStrictlyEqualTo("{\"login\": \"yan\", \"role\": \"reader\"}");
        assertThat(statusAs("yan", "long enough for this")).isEqualTo(200);
    }

    @Test
    void get_another_password_and_lose_the_old_one() {
        put("xim", "{\"role\": \"reader\", \"password\": \"the first one of these\"}");
        put("xim", "{\"role\": \"reader\", \"password\": \"the second one of these\"}");

        assertThat(statusAs("xim", "the first one of these")).isEqualTo(401);
        assertThat(statusAs("xim", "the second one of these")).isEqualTo(200);
    }

    @Test
    void never_leave_the_place_without_an_owner() {
        assertThat(put("owner", "{\"role\": \"reader\"}")).hasStatus(409);
    }

    @Test
    void with_a_password_that_the_rules_are_against_are_refused_with_the_reason() {
        MvcTestResult refused = put("wim", "{\"role\": \"reader\", \"password\": \"only 14 long..\"}");

        assertThat(refused).hasStatus(422);
        assertThat(refused)
                .bodyText()
                .contains("/password", "must be at least 15 characters")
                .doesNotContain("only 14");
        assertThat(statusAs("wim", "only 14 long..")).isEqualTo(401);
    }

    @Test
    void must_be_fit_for_an_address() {
        assertThat(put("Zoe Q", "{\"role\": \"reader\"}")).hasStatus(404);
    }

    private MvcTestResult put(String login, String body) {
        return doors.as("owner", HttpMethod.PUT, "/api/v1/logins/" + login)
                .contentType("application/json")
                .content(body)
                .exchange();
    }

    private int statusAs(String login, String password) {
        String pair = Base64.getEncoder().encodeToString((login + ":" + password).getBytes(StandardCharsets.UTF_8));
        return doors.stranger(HttpMethod.GET, "/api/v1/alarms")
                .header("Authorization", "Basic " + pair)
                .exchange()
                .getResponse()
                .getStatus();
    }
}
