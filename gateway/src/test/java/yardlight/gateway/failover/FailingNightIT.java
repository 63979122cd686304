package yardlight.gateway.failover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.channels.mail.ScriptedServer;
import yardlight.channels.modem.StandInModem;
import yardlight.channels.smpp.StandInCentre;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;

/**
 * A night in which one way after the other fails: the mail server in the middle of a mail, the message centre because it
 * throttles, the modem because it loses its network. Whatever way is left, it is found before the wait of the rung is over.
 */
@EnabledIf("yardlight.channels.modem.StandInModem#isPossible")
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class FailingNightIT {

    private static final Duration WAIT = Duration.ofMinutes(2);

    /** SMPP 3.4, 5.1.3. */
    private static final int THROTTLED = 0x58;

    /** 3GPP TS 27.007, 7.2. */
    private static final int SEARCHING = 2;

    private static final int AT_HOME = 1;

    private static final String SETUP = """
            sites:    [{id: mesa-9, name: Mesa 9, zone: America/Chicago, ladder: night}]
            boxes:    [{id: mesa-9-box, site: mesa-9}]
            contacts:
              - id: ana
                name: Ana Ruelas
                lines:
                  - {channel: mail, address: ana@mesa.example}
                  - {channel: modem, address: "+15755550101"}
                  - {channel: smpp, address: "+15755550101"}
            ladders:
              - id: night
                rungs: [{call: [ana], wait: PT2M}]
            """;

    private static final ScriptedServer MAIL = opened(ScriptedServer::new);
    private static final StandInCentre CENTRE = opened(StandInCentre::new);
    private static final AtomicReference<StandInModem> MODEM = new AtomicReference<>();

    private final Web web;

    FailingNightIT(@LocalServerPort int port) {
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        StandInModem modem = opened(StandInModem::new);
        MODEM.set(modem);
        WholeGateway.settings(registry);
        registry.add("spring.mail.port", MAIL::port);
        registry.add("yardlight.smpp.host", () -> "127.0.0.1");
        registry.add("yardlight.smpp.port", CENTRE::port);
        registry.add("yardlight.smpp.system-id", () -> "yardlight");
        registry.add("yardlight.smpp.password", () -> "secret08");
        registry.add("yardlight.smpp.tls", () -> false);
        registry.add("yardlight.dispatch.receipt-within.smpp", () -> "PT0S");
        registry.add("yardlight.modem.port", modem::port);
        registry.add("yardlight.dispatch.taken-within", () -> "6s");
    }

    @AfterAll
    static void close() throws IOException {
        MAIL.close();
        CENTRE.close();
        MODEM.get().close();
    }

    @Test
    void finds_the_way_that_is_left_and_says_which_and_why() {
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);

        assertThat(night("all-well")).isEqualTo("mail");

        MAIL.does(".", "", ScriptedServer.After.HANG_UP);
        assertThat(night("mail-breaks")).isEqualTo("modem");

        MODEM.get().registration = SEARCHING;
        assertThat(night("modem-lost")).isEqualTo("smpp");

        CENTRE.status = THROTTLED;
        MODEM.get().registration = AT_HOME;
        assertThat(night("centre-throttles")).isEqualTo("modem");

        MODEM.get().registration = SEARCHING;
        MAIL.says(".", "250 2.0.0 taken");
        assertThat(night("mail-mended")).isEqualTo("mail");

        assertThat(web.get("/api/v1/log", Web.owner()).body())
                .contains("hung up at end of the text (twice without an answer: it may not have been taken)")
                .contains("the modem has no network: it is looking for one")
                .contains("handed over: smpp");
    }

    /** The way by which a critical alarm reached her, as the record has it; whoever is at its other end has the text. */
    private String night(String condition) {
        Instant raised = Instant.now();
        String alarm = raised(condition);
        JsonNode notice = await().atMost(WAIT)
                .until(() -> notice(alarm), one -> one.get("state").asString().equals("handed-over"));
        String way = notice.get("channel").asString();
        System.out.println(condition + " reached her by " + way + " after "
                + Duration.between(raised, Instant.now()).toMillis() + " ms");

        List<String> texts = switch (way) {
            case "mail" -> MAIL.mails.stream().map(ScriptedServer.Mail::text).toList();
            case "modem" -> MODEM.get().texts();
            default -> texts();
        };
        assertThat(texts).anyMatch(text -> text.contains(condition.toUpperCase(Locale.ROOT)));
        assertThat(notice.get("attempts"))
                .last()
                .satisfies(
                        attempt -> assertThat(attempt.get("outcome").asString()).isEqualTo("accepted"));
        web.post("/api/v1/alarms/" + alarm + "/acknowledge", "application/json", "{\"contact\": \"ana\"}", Web.owner());
        return way;
    }

    private JsonNode notice(String alarm) {
        JsonNode read = Web.json(web.get("/api/v1/alarms/" + alarm, Web.owner()));
        return read.get("callout").get("notices").get(0);
    }

    private String raised(String condition) {
        HttpResponse<String> key = web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner());
        JsonNode event = Web.json(web.post(
                "/api/v1/events",
                "application/x-www-form-urlencoded",
                "point=water-tank&condition=" + condition + "&state=active&priority=critical",
                "Authorization",
                "Bearer " + Web.json(key).get("key").asString()));
        return event.get("results").get(0).get("alarm").asString();
    }

    private static List<String> texts() {
        return CENTRE.taken.stream()
                .map(unit -> new String(unit.getShortMessage(), StandardCharsets.US_ASCII))
                .toList();
    }

    private interface Opening<T> {
        T open() throws IOException;
    }

    private static <T> T opened(Opening<T> opening) {
        try {
            return opening.open();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
