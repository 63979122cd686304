package yardlight.gateway.smpp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.icegreen.greenmail.util.GreenMailUtil;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.channels.smpp.Bringing;
import yardlight.channels.smpp.StandInCentre;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** Nights through the whole gateway with a message centre that brings texts, and receipts late or never. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class CentreNightIT {

    private static final String ANA = "15755550101";
    private static final String SETUP = Documents.CONTRACT
            .replace(
                    "{channel: sms-mail, address: 5755550101@txt.example}",
                    "{channel: smpp, address: \"+" + ANA + "\"}")
            .replace("call: [ana], wait: PT5M, rounds: 2", "call: [ana], wait: PT1M, rounds: 2");
    private static final StandInCentre CENTRE = centre();

    private static int number;

    private final Web web;

    CentreNightIT(@LocalServerPort int port) {
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        registry.add("yardlight.smpp.host", () -> "127.0.0.1");
        registry.add("yardlight.smpp.port", CENTRE::port);
        registry.add("yardlight.smpp.system-id", () -> "yardlight");
        registry.add("yardlight.smpp.password", () -> "secret08");
        registry.add("yardlight.smpp.tls", () -> false);
        registry.add("yardlight.dispatch.receipt-within.smpp", () -> "PT2S");
    }

    @AfterAll
    static void close() throws IOException {
        CENTRE.close();
    }

    @BeforeEach
    void set_up() {
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);
        await().atMost(Duration.ofSeconds(30)).until(() -> CENTRE.sessions() > 0);
    }

    @Test
    void a_text_without_a_receipt_is_followed_by_a_mail() {
        String alarm = raised();

        mailed(alarm);

        assertThat(texts()).anyMatch(text -> text.contains(alarm));
        assertThat(log())
                .containsPattern("taken by smpp at [0-9:]+ [AP]M but no receipt for 2 s; the next line is tried");
    }

    @Test
    void stop_is_confirmed_once_and_after_it_nothing_goes_to_the_line_until_start() {
        assertThat(bringing().text(ANA, "STOP")).isZero();
        await().atMost(Duration.ofSeconds(20))
                .until(() -> texts().stream().anyMatch(text -> text.startsWith("Nothing more comes")));
        int before = texts().size();

        bringing().text(ANA, "stop");
        bringing().text(ANA, "STATUS");
        String alarm = raised();
        mailed(alarm);

        assertThat(texts()).hasSize(before);
        assertThat(log())
                .contains("line smpp of ana is stopped: Ana Ruelas wrote STOP from +" + ANA)
                .contains("wrote: STATUS; not answered");
        assertThat(web.get("/api/v1/alarms?site=gateway", Web.owner()).body()).contains("said-stop");

        bringing().text(ANA, "START");
        await().atMost(Duration.ofSeconds(20))
                .until(() -> texts().stream().anyMatch(text -> text.startsWith("You are called here again.")));
        String next = raised();
        await().atMost(Duration.ofSeconds(20)).until(() -> texts().stream().anyMatch(text -> text.contains(next)));
    }

    private static Bringing bringing() {
        return new Bringing(CENTRE);
    }

    private static List<String> texts() {
        return CENTRE.taken.stream()
                .map(unit -> new String(unit.getShortMessage(), StandardCharsets.US_ASCII))
                .toList();
    }

    private static void mailed(String words) {
        await().atMost(Duration.ofSeconds(20))
                .until(() -> Arrays.stream(WholeGateway.CARRIER.getReceivedMessagesForDomain("mesa.example"))
                        .anyMatch(mail -> GreenMailUtil.getBody(mail).contains(words)));
    }

    /** A critical alarm that no text was about before; comes back with how texts name it. */
    private String raised() {
        HttpResponse<String> key = web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner());
        String condition = "level-" + ++number;
        HttpResponse<String> answer = web.post(
                "/api/v1/events",
                "application/x-www-form-urlencoded",
                "point=water-tank&condition=" + condition + "&state=active&priority=critical",
                "Authorization",
                "Bearer " + Web.json(key).get("key").asString());
        assertThat(answer.statusCode()).isEqualTo(202);
        return condition.toUpperCase(Locale.ROOT);
    }

    private String log() {
        return web.get("/api/v1/log", Web.owner()).body();
    }

    private static StandInCentre centre() {
        try {
            return new StandInCentre();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
