package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.gateway.setup.Documents;

/** What only a real server shows: its own errors, its error page, sessions, streams. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class DoorsIT {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final Web web;

    DoorsIT(@LocalServerPort int port) {
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @ParameterizedTest
    @CsvSource({
        "GET, //api/v1/alarms, 400",
        "GET, /api/v1/alarms;a=b, 400",
        "GET, /api/v1/%2e%2e/alarms, 400",
        "GET, /api/v1/alarms/%00, 400",
        "GET, /error, 404",
        "GET, /actuator/env, 404",
        "GET, /actuator/beans, 404",
        "GET, /h2-console, 404",
        "PATCH, /api/v1/setup, 405",
        "DELETE, /api/v1/log, 405"
    })
    void a_strange_request_gets_a_plain_problem(String method, String path, int status) {
        HttpResponse<String> answer = web.call(method, path, Web.owner());

        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/problem+json");
        assertThat(Web.json(answer).get("status").asInt()).isEqualTo(status);
        assertThat(answer.body()).doesNotContain("Exception", "org.", "tomcat", "java.");
    }

    @Test
    void a_request_that_is_not_http_tells_nothing_of_the_server() throws IOException {
        String answer = raw("GET /[bad HTTP/1.1\r\nHost: here\r\n\r\n");

        assertThat(answer).startsWith("HTTP/1.1 400").doesNotContain("Tomcat", "java", "Exception");
    }

    /** With a filter of the security chain on the error page a bad body would come back as 401 or 403. */
    @Test
    void a_bad_body_stays_400_behind_the_security_chain() {
        web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner());
        HttpResponse<String> made = web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner());
        String key = Web.json(made).get("key").asString();

        HttpResponse<String> answer =
                web.post("/api/v1/events", "application/json", "{", "Authorization", "Bearer " + key);

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(web.get("/api/v1/events", "Authorization", "Bearer " + key).statusCode())
                .isEqualTo(405);
        assertThat(web.get("/api/v1/events", "Authorization", "Bearer " + key)
                        .headers()
                        .firstValue("Allow"))
                .contains("POST");
    }

    @Test
    void readiness_is_public_and_says_how_each_channel_stands() {
        HttpResponse<String> answer = web.get("/actuator/health/readiness");

        JsonNode health = Web.json(answer);
        assertThat(health.get("status").asString()).isEqualTo("UP");
        assertThat(health.get("components").get("channels").get("details").propertyNames())
                .containsExactlyInAnyOrder("mail", "sms-mail", "smpp", "push", "mailbox");
        assertThat(web.get("/actuator/health/liveness").body()).isEqualTo("{\"status\":\"UP\"}");
        assertThat(web.get("/actuator/health").body()).doesNotContain("diskSpace", "path");
    }

    @Test
    void metrics_need_a_login() {
        assertThat(web.get("/actuator/prometheus").statusCode()).isEqualTo(401);
        assertThat(web.get("/actuator/prometheus", Web.owner()).body()).contains("jvm_memory_used_bytes");
    }

    @Test
    void the_api_describes_itself() {
        JsonNode api = Web.json(web.get("/v3/api-docs"));

        assertThat(api.get("openapi").asString()).startsWith("3.1");
        assertThat(api.get("info").get("title").asString()).isEqualTo("Yardlight");
        assertThat(api.get("servers").get(0).get("url").asString()).isEqualTo("/");
        assertThat(api.get("paths").propertyNames()).contains("/api/v1/events", "/api/v1/setup", "/api/v1/log");
        JsonNode events = api.get("paths")
                .get("/api/v1/events")
                .get("post")
                .get("requestBody")
                .get("content");
        assertThat(events.propertyNames())
                .containsExactlyInAnyOrder(
                        "application/json", "application/x-ndjson", "application/x-www-form-urlencoded");
        assertThat(events.get("application/x-ndjson")
                        .get("schema")
                        .get("properties")
                        .get("value")
                        .get("type")
                        .asString())
                .isEqualTo("number");
    }

    @Test
    void a_session_begins_when_somebody_signs_in_and_ends_when_they_sign_out() {
        HttpResponse<String> page = web.get("/login");
        String before = cookie(page, "XSRF-TOKEN");

        HttpResponse<String> in =
                form("/login", before, "username=owner&password=" + password() + "&_csrf=" + token(page));

        String after = cookie(in, "JSESSIONID");
        assertThat(in.statusCode()).isEqualTo(302);
        assertThat(page.headers().allValues("Set-Cookie")).noneMatch(cookie -> cookie.startsWith("JSESSIONID"));
        assertThat(in.headers().allValues("Set-Cookie"))
                .allSatisfy(cookie ->
                        assertThat(cookie).contains("HttpOnly").containsAnyOf("SameSite=Lax", "SameSite=Strict"));
        HttpResponse<String> board = web.get("/", "Cookie", after, "Accept", "text/html");
        assertThat(board.statusCode()).isEqualTo(200);
        HttpResponse<String> out = form("/logout", after + "; " + cookie(board, "XSRF-TOKEN"), "_csrf=" + token(board));
        assertThat(out.statusCode()).isEqualTo(302);
        assertThat(web.get("/", "Cookie", after, "Accept", "text/html").statusCode())
                .isEqualTo(302);
    }

    @Test
    void the_log_comes_as_json_and_as_csv() {
        web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner());

        HttpResponse<String> json = web.get("/api/v1/log", Web.owner());
        HttpResponse<String> csv = web.get("/api/v1/log", "Authorization", Doors.basic("owner"), "Accept", "text/csv");

        assertThat(Web.json(json).get(0).get("line").asLong()).isEqualTo(1);
        assertThat(csv.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/csv");
        assertThat(csv.body()).startsWith("line,at,what,site,box,alarm,callout,notice,contact,words\r\n1,");
        assertThat(csv.body().lines().count()).isGreaterThan(1);
        assertThat(web.get("/api/v1/log?to=2020-01-01T00:00:00Z", Web.owner()).body())
                .isEqualTo("[]");
        assertThat(web.get("/api/v1/log?from=now", Web.owner()).statusCode()).isEqualTo(422);
    }

    private static String password() {
        return GatewayTest.PASSWORD.replace(' ', '+');
    }

    private HttpResponse<String> form(String path, String cookie, String fields) {
        return web.post(path, "application/x-www-form-urlencoded", fields, "Cookie", cookie, "Accept", "text/html");
    }

    private static String cookie(HttpResponse<String> response, String name) {
        return response.headers().allValues("Set-Cookie").stream()
                .map(cookie -> cookie.split(";")[0])
                .filter(cookie -> cookie.startsWith(name + "="))
                .reduce((first, last) -> last)
                .orElseThrow();
    }

    private static String token(HttpResponse<String> page) {
        Matcher matcher = TOKEN.matcher(page.body());
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }

    private String raw(String request) throws IOException {
        try (var socket = new Socket("127.0.0.1", web.port())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
