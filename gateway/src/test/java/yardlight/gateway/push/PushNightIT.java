package yardlight.gateway.push;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.channels.push.PushKey;
import yardlight.channels.push.StandInService;
import yardlight.channels.push.Token;
import yardlight.db.secret.Secrets;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** An alarm through the whole gateway to a browser that subscribed. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class PushNightIT {

    private static final StandInService SERVICE = service();
    private static final String SETUP = Documents.CONTRACT.replace(
            "{channel: sms-mail, address: 5755550101@txt.example}",
            "{channel: push, address: \"" + SERVICE.subscription() + "\"}");

    private final Web web;
    private final Secrets secrets;

    @Autowired
    PushNightIT(@LocalServerPort int port, Secrets secrets) {
        this.web = new Web(port);
        this.secrets = secrets;
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        registry.add("yardlight.push.contact", () -> "mailto:yard@ranch.example");
        registry.add("yardlight.push.allow-loopback", () -> "true");
    }

    @AfterAll
    static void close() {
        SERVICE.close();
    }

    @Test
    void the_browser_reads_it_and_it_is_signed_with_the_key_that_is_kept() throws GeneralSecurityException {
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);

        event();

        await().atMost(Duration.ofSeconds(20)).until(() -> !SERVICE.pushed.isEmpty());
        StandInService.Pushed pushed = SERVICE.pushed.get(0);
        assertThat(pushed.note())
                .contains("\"text\":\"MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0)", "https://yl.example/a/");
        PushKey kept = PushKey.of(secrets.get("push", () -> new byte[0], Instant.EPOCH));
        assertThat(Token.in(pushed.header("Authorization")).key()).isEqualTo(kept.applicationServerKey());
    }

    @Test
    void a_subscription_that_leads_inside_is_not_even_stored() {
        String inside = SETUP.replace("http://127.0.0.1:", "https://10.0.0.1:");

        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", inside, Web.owner());

        assertThat(stored.statusCode()).isEqualTo(422);
        assertThat(stored.body()).contains("not a subscription as endpoint|p256dh|auth with a public https endpoint");
    }

    private void event() {
        HttpResponse<String> key = web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner());
        web.post(
                "/api/v1/events",
                "application/x-www-form-urlencoded",
                "point=water-tank&condition=high-high&state=active&value=18.4&limit=18.0&unit=ft",
                "Authorization",
                "Bearer " + Web.json(key).get("key").asString());
    }

    private static StandInService service() {
        try {
            return new StandInService();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
