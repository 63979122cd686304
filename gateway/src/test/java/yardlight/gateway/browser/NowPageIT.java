package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.gateway.Web;

/** The first page, as somebody sees it who leaves it open. */
class NowPageIT extends SharedGateway {

    @ParameterizedTest
    @EnumSource(Look.class)
    void shows_an_alarm_without_being_loaded_again(Look look) {
        String point = "sump-" + look.word();
        String name = "SUMP " + look.word().replace('-', ' ').toUpperCase(Locale.ROOT);
        try (var visit = Visit.to(port, look).signIn("owner")) {
            assertThat(visit.page().locator("body")).not().containsText(name);

            post(point, "active");

            assertThat(visit.page().locator("#now")).containsText(name);
            visit.check("now");
        }
        post(point, "normal");
        web.post("/api/v1/alarms/mesa-9." + point + ".high-high.1/acknowledge", "application/json", "{}", Web.owner());
    }

    private void post(String point, String state) {
        String key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
        web.post(
                "/api/v1/events",
                "application/json",
                "{\"point\": \"" + point + "\", \"condition\": \"high-high\", \"state\": \"" + state + "\"}",
                "Authorization",
                "Bearer " + key);
    }
}
