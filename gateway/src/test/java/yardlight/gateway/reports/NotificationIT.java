package yardlight.gateway.reports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.gateway.Mails;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** The report of a night that really was: a box, a carrier, people who answer; the PDF is read by PDFBox. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class NotificationIT {

    private static final String FORM = "application/x-www-form-urlencoded";

    /** Made up; the letters are of Spanish, Polish, Russian and Hebrew, and one that the typeface has not. */
    private static final String NAME = "José Ñúñez-Łoś Иван אבי 王";

    private final Web web;
    private final int port;

    NotificationIT(@LocalServerPort int port) {
        this.web = new Web(port);
        this.port = port;
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeEach
    void ben_is_called_soon_after_ana() {
        String setup = Documents.CONTRACT
                .replace("{call: [ana], wait: PT5M, rounds: 2}", "{call: [ana], wait: PT3S}")
                .replace("{call: [\"roster:crew\"], wait: PT5M}", "{call: [ben], wait: PT15M}")
                .replace("Ben Tully", NAME);
        assertThat(web.put("/api/v1/setup", "application/yaml", setup, Web.owner())
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void a_night_is_one_page_that_says_who_was_told_and_when_somebody_knew() throws Exception {
        Instant happened = Instant.now().minusSeconds(150).truncatedTo(ChronoUnit.SECONDS);
        String id =
                alarm("point=water-tank&condition=high-high&state=active&value=18.4&limit=18.0&unit=ft&at=" + happened);
        Mails.textTo("5755550101@txt.example", "WATER TANK");
        web.post(Mails.link(Mails.textTo("5755550102@txt.example", "WATER TANK")), FORM, "");
        alarm("point=water-tank&condition=high-high&state=normal");
        await().atMost(Duration.ofSeconds(20)).until(() -> json(id).path("told").size() >= 2);

        knownFrom(json(id), happened);
        JsonNode report = json(id);
        Printed pdf = Printed.of(get("alarm=" + id, "application/pdf", "en").body(), "notification");
        assertThat(pdf.pages()).isEqualTo(1);
        assertThat(pdf.flowing())
                .contains(
                        "Notification report",
                        "Mesa 9: WATER TANK high-high",
                        "18.4 ft; limit 18.0 ft",
                        Stamps.utc(happened),
                        "From the event to the first person's knowledge: " + Stamps.length(known(report)),
                        "acknowledged it by the link",
                        "Ana Ruelas",
                        "José Ñúñez-Łoś Иван",
                        "[U+738B]",
                        "it is not legal advice",
                        "docs/verify.md")
                .doesNotContain("5755550101", "575-555", "/a/");
        assertThat(pdf.flowing().replace(" ", "")).contains("אבי");
        assertThat(pdf.attached()).startsWith("{\"at\":").contains("\"root\":");
        assertThat(pdf.text().replaceAll("\\s", "")).contains(pdf.attached());
        Printed spanish = Printed.of(get("alarm=" + id, "application/pdf", "es").body(), "notification-es");
        assertThat(spanish.pages()).isEqualTo(1);
        assertThat(spanish.flowing()).contains("A quién se avisó", "la atendió por el enlace", "no es consejo legal");
    }

    private static void knownFrom(JsonNode report, Instant happened) {
        assertThat(report.get("happenedAt").asString()).isEqualTo(happened.toString());
        assertThat(report.get("answers").get(0).get("by").asString()).isEqualTo("ben");
        assertThat(report.get("answers").get(0).get("way").asString()).isEqualTo("link");
        assertThat(known(report)).isBetween(Duration.ofSeconds(150), Duration.ofSeconds(200));
        assertThat(report.get("told").get(0).get("contact").asString()).isEqualTo("ana");
        assertThat(report.get("told").get(0).get("lines").size()).isPositive();
    }

    private static Duration known(JsonNode report) {
        return Duration.parse(report.get("eventToKnowledge").asString());
    }

    private JsonNode json(String id) {
        return Web.json(web.get("/api/v1/reports/notification?alarm=" + id, Web.owner()))
                .get("alarms")
                .get(0);
    }

    private HttpResponse<byte[]> get(String query, String accept, String language)
            throws IOException, InterruptedException {
        URI address = URI.create("http://127.0.0.1:" + port + "/api/v1/reports/notification?" + query);
        HttpRequest request = HttpRequest.newBuilder(address)
                .headers(Web.owner())
                .header("Accept", accept)
                .header("Accept-Language", language)
                .build();
        HttpResponse<byte[]> response =
                HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Type").orElse("")).startsWith(accept);
        return response;
    }

    private String alarm(String fields) {
        String key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
        return Web.json(web.post("/api/v1/events", FORM, fields, "Authorization", "Bearer " + key))
                .get("results")
                .get(0)
                .get("alarm")
                .asString();
    }
}
