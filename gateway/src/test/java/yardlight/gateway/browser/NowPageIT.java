package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** The first page, as somebody sees it who leaves it open. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class NowPageIT {

    private final int port;
    private final Web web;

    @Autowired
    NowPageIT(@LocalServerPort int port) {
        this.port = port;
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeEach
    void set_up() {
        web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner());
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void shows_an_alarm_without_being_loaded_again(Look look) {
        String point = "tank-" + look.word();
        String name = "TANK " + look.word().replace('-', ' ').toUpperCase(Locale.ROOT);
        try (var visit = Visit.to(port, look).signIn("owner")) {
            assertThat(visit.page().locator("body")).not().containsText(name);

            post(point);

            assertThat(visit.page().locator("#now")).containsText(name);
            visit.check("now");
        }
    }

    private void post(String point) {
        String key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
        web.post(
                "/api/v1/events",
                "application/json",
                "{\"point\": \"" + point + "\", \"condition\": \"high-high\", \"state\": \"active\"}",
                "Authorization",
                "Bearer " + key);
    }
}
