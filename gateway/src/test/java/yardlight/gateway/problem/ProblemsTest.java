package yardlight.gateway.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UnsupportedEncodingException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;

@GatewayTest
class ProblemsTest {

    private static final String EVENT = "{\"point\":\"water-tank\",\"condition\":\"high-high\",\"state\":\"active\"}";

    private final Doors doors;
    private final FakeLane lane;

    ProblemsTest(Doors doors, FakeLane lane) {
        this.doors = doors;
        this.lane = lane;
        lane.clear();
    }

    @Test
    void have_the_members_of_rfc_9457() {
        MvcTestResult result =
                doors.as("reader", HttpMethod.GET, "/api/v1/alarms/none").exchange();

        assertThat(result)
                .hasStatus(404)
                .hasContentType("application/problem+json")
                .bodyJson()
                .isStrictlyEqualTo("""
                {"title": "Not Found", "status": 404, "detail": "there is no such alarm",
                 "instance": "/api/v1/alarms/none"}
                """);
        assertThat(result).hasHeader("Cache-Control", "no-store");
    }

    /** The API says it in English whatever the caller reads. */
    @Test
    void are_a_page_in_the_language_of_the_reader() {
        assertThat(doors.as("reader", HttpMethod.GET, "/nothing/at/all")
                        .header("Accept", "text/html")
                        .header("Accept-Language", "es-MX"))
                .hasStatus(404)
                .bodyText()
                .contains("<html lang=\"es\">", "404 No encontrado", "no hay nada en esta dirección");
        assertThat(doors.as("reader", HttpMethod.GET, "/nothing/at/all").header("Accept-Language", "es-MX"))
                .hasStatus(404)
                .bodyJson()
                .extractingPath("$.detail")
                .isEqualTo("there is nothing at this address");
    }

    @Test
    void of_a_stranger_name_how_to_come_in() {
        MvcTestResult result = doors.stranger(HttpMethod.GET, "/api/v1/alarms").exchange();

        assertThat(result)
                .hasStatus(401)
                .hasContentType("application/problem+json")
                .hasHeader("WWW-Authenticate", "Basic realm=\"Yardlight\"");
    }

    @Test
    void of_a_wrong_password_are_the_same() {
        MvcTestResult result = doors.stranger(HttpMethod.GET, "/api/v1/alarms")
                .header("Authorization", "Basic b3duZXI6d3Jvbmc=")
                .exchange();

        assertThat(result)
                .hasStatus(401)
                .hasContentType("application/problem+json")
                .hasHeader("WWW-Authenticate", "Basic realm=\"Yardlight\"");
    }

    @ParameterizedTest
    @CsvSource({"Bearer wrong", "Bearer", "Basic b3duZXI6d3Jvbmc=", "wrong"})
    void of_a_box_without_a_good_key_name_the_scheme(String header) {
        MvcTestResult result = doors.stranger(HttpMethod.POST, "/api/v1/events")
                .header("Authorization", header)
                .exchange();

        assertThat(result)
                .hasStatus(401)
                .hasContentType("application/problem+json")
                .hasHeader("WWW-Authenticate", "Bearer realm=\"Yardlight\"");
    }

    @Test
    void of_a_role_that_is_too_small_are_forbidden() {
        MvcTestResult result = doors.as("hand", HttpMethod.PUT, "/api/v1/setup").exchange();

        assertThat(result)
                .hasStatus(403)
                .hasContentType("application/problem+json")
                .bodyJson()
                .extractingPath("$.detail")
                .isEqualTo("this login may not do that");
    }

    @Test
    void of_an_address_that_does_not_exist_are_not_found() {
        assertThat(doors.as("reader", HttpMethod.GET, "/api/v1/nothing"))
                .hasStatus(404)
                .hasContentType("application/problem+json");
    }

    @Test
    void of_a_wrong_method_name_the_right_ones() {
        MvcTestResult result =
                doors.as("owner", HttpMethod.DELETE, "/api/v1/setup").exchange();

        assertThat(result).hasStatus(405).hasContentType("application/problem+json");
        assertThat(result.getResponse().getHeader("Allow")).contains("GET").contains("PUT");
    }

    @Test
    void of_a_type_that_nobody_writes_are_not_acceptable() {
        assertThat(doors.as("reader", HttpMethod.GET, "/api/v1/alarms").accept("image/png"))
                .hasStatus(406)
                .hasContentType("application/problem+json");
    }

    @Test
    void of_a_type_that_nobody_reads_name_the_right_ones() {
        MvcTestResult result = doors.as("owner", HttpMethod.PUT, "/api/v1/setup")
                .contentType("text/plain")
                .content("sites: []")
                .exchange();

        assertThat(result).hasStatus(415).hasHeader("Accept", "application/yaml, application/json");
    }

    @Test
    void of_a_query_name_the_parameter() {
        MvcTestResult result = doors.as("reader", HttpMethod.GET, "/api/v1/alarms?state=loud&from=yesterday")
                .exchange();

        assertThat(result).hasStatus(422);
        assertThat(result).bodyJson().extractingPath("$.errors[0].parameter").isEqualTo("state");
        assertThat(result).bodyJson().extractingPath("$.errors[1].parameter").isEqualTo("from");
    }

    @Test
    void of_a_database_that_is_away_ask_to_come_back() {
        lane.trouble = Optional.of(new DataAccessResourceFailureException("jdbc:h2:file:/secret/place"));

        MvcTestResult result = doors.post("/api/v1/events", "application/json", EVENT);

        assertThat(result).hasStatus(503).hasHeader("Retry-After", "2");
        assertThat(text(result)).doesNotContain("secret");
    }

    @Test
    void of_our_own_making_show_nothing_of_the_inside() {
        lane.trouble = Optional.of(new IllegalStateException("the secret inside of yardlight.gateway.Something"));

        MvcTestResult result = doors.post("/api/v1/events", "application/json", EVENT);

        assertThat(result).hasStatus(500).hasContentType("application/problem+json");
        assertThat(text(result)).doesNotContain("secret", "Something", "Exception");
    }

    @Test
    void are_a_page_for_a_person() {
        MvcTestResult result = doors.as("reader", HttpMethod.GET, "/api/v1/alarms/<b>none")
                .accept("text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8")
                .exchange();

        assertThat(result).hasStatus(404).hasContentType("text/html;charset=UTF-8");
        assertThat(text(result))
                .contains("<h1>404 Not Found</h1>", "there is no such alarm")
                .doesNotContain("<b>");
    }

    @Test
    void never_carry_a_page_out_of_its_frame() {
        MvcTestResult result = doors.stranger(HttpMethod.GET, "/api/v1/alarms").exchange();

        assertThat(result)
                .hasHeader("X-Content-Type-Options", "nosniff")
                .hasHeader("X-Frame-Options", "DENY")
                .hasHeader("Referrer-Policy", "no-referrer");
        assertThat(result.getResponse().getHeader("Content-Security-Policy")).startsWith("default-src 'none';");
    }

    private static String text(MvcTestResult result) {
        try {
            return result.getResponse().getContentAsString();
        } catch (UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }
}
