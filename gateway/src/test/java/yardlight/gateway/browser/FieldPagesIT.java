package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.gateway.Web;
import yardlight.gateway.setup.Documents;

/** The owner sets up limits, a tank, a pump, the times of a site and how it is asked to shut in, field by field. */
class FieldPagesIT extends SharedGateway {

    private static final String TANK = "/sites/mesa-9/points/water-tank";

    @ParameterizedTest
    @EnumSource(Look.class)
    void a_point_gets_its_limits_and_its_tank(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open(TANK);
            assertThat(page.locator("#limits-high")).not().isVisible();
            visit.check("point-fields");

            open(page, "limits");
            page.fill("#limits-highHigh", "16");
            page.fill("#limits-high", "18");
            open(page, "tank");
            page.selectOption("#tank-shape", "strapping");
            page.fill("#tank-strapping", "1 20\n2");
            assertThat(page.locator("#tank-diameter")).not().isVisible();
            save(page);
            assertThat(page.locator("#wrong-tank-strapping")).containsText("Line 2 has to be two numbers");
            assertThat(page.locator("#limits-high")).hasValue("18");
            visit.forgive();

            page.selectOption("#tank-shape", "upright");
            page.fill("#tank-diameter", "12");
            page.fill("#tank-height", "20");
            save(page);
            assertThat(page.locator("#wrong-limits-highHigh")).containsText("Higher than the other limits");
            assertThat(page.locator("#tank-height")).hasValue("20");
            open(page, "tank");
            visit.forgive();
            visit.check("point-fields-wrong");

            page.fill("#limits-highHigh", "18");
            page.fill("#limits-high", "16.0");
            save(page);
            assertThat(page.locator("#site")).containsText("WATER TANK");
            assertThat(setup())
                    .contains("highHigh: 18", "high: 16.0", "shape: upright", "diameter: 12", "height: 20")
                    .doesNotContain("strapping");
            says_what_is_in_it_and_what_that_would_have_called(visit);
        }
    }

    private static void says_what_is_in_it_and_what_that_would_have_called(Visit visit) {
        Page page = visit.open(TANK);
        assertThat(page.locator("#fold-limits summary")).containsText("high-high 18 ft, high 16.0 ft");
        assertThat(page.locator("#fold-tank summary")).containsText("upright cylinder: diameter 12 ft");
        open(page, "limits");
        page.locator("#fold-limits a").click();
        assertThat(page.locator("main")).containsText("What its readings of the last 30 days would have called");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void every_group_of_a_point_can_be_filled_in(Look look) {
        String point = "pump-" + look.word();
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/sites/mesa-9/points/" + point);
            page.locator("details.fold summary").all().forEach(summary -> summary.click());
            page.fill("#name", "TRANSFER PUMP");
            page.fill("#unit", "A");
            page.check("#pump");
            page.fill("#pump-on", "4");
            page.fill("#pump-hold", "2");
            page.selectOption("select[name=pump-holdUnit]", "D");
            page.fill("#change-rise", "3");
            page.fill("#change-within", "10");
            page.fill("#missing", "15");
            page.fill("#suppressedWhile", "power-pump/power-off");
            page.fill("#current-low", "0");
            page.fill("#current-high", "20");
            page.check("#leak");
            page.selectOption("#tank-shape", "lying");
            visit.check("point-fields-open");
            page.selectOption("#tank-shape", "");
            page.uncheck("#leak");
            assertThat(page.locator("#leak-factor")).not().isVisible();
            save(page);

            assertThat(page.locator("#site")).containsText("TRANSFER PUMP");
            assertThat(setup())
                    .contains("hold: P2D", "within: PT10M", "missing: PT15M", "- power-pump/power-off")
                    .doesNotContain("leak", "tank:");
        }
    }

    @Test
    void who_saves_limits_that_somebody_else_changed_sees_what_changed() {
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open(TANK);
            open(page, "limits");
            page.fill("#limits-high", "15");
            setUp(Documents.CONTRACT.replace("latching: false}", "latching: false, limits: {high: 17}}"));

            save(page);

            assertThat(page.locator(".changed")).containsText("limits high");
            assertThat(page.locator(".changed")).containsText("17");
            assertThat(page.locator("#limits-high")).hasValue("15");
            visit.forgive();
            save(page);
            assertThat(setup()).contains("high: 15");
        }
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void a_site_gets_its_times_and_shows_what_its_points_read(Look look) {
        read("12.4");
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/sites/mesa-9");
            assertThat(page.locator("#site .point").first()).containsText("12.4 ft, ");
            assertThat(page.locator("#site .point").first()).containsText(" ago");
            assertThat(page.locator("#response summary")).containsText("as usual");
            page.locator("#response summary").click();
            page.fill("#response-reach", "10");
            page.fill("#response-margin", "0.5");
            visit.check("site-response");
            page.locator("#response button").click();
            assertThat(page.locator("#wrong-response-margin")).containsText("From 1 to 10");
            assertThat(page.locator("#response-reach")).hasValue("10");
            visit.forgive();
            visit.check("site-response-wrong");
            page.fill("#response-margin", "2");
            page.locator("#response button").click();
            assertThat(page.locator("#response summary")).containsText("reach 10 min, margin 2");
            assertThat(setup()).contains("reach: PT10M", "margin: 2");
        }
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void the_owner_says_how_a_site_is_asked_and_then_turns_it_on(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/sites/mesa-9");
            page.click("#shut-in-unset");
            page.click("#terms");
            assertThat(page.locator("#caution")).containsText("It is not a safety system");
            assertThat(page.locator("#caution")).containsText("Hard-wired shutdowns stay");
            assertThat(page.locator("#caution")).containsText("Local codes and licensed practice come first");
            page.selectOption("#shutIn-way", "box");
            page.fill("#shutIn-expires", "1");
            save(page);
            assertThat(page.locator("#wrong-shutIn-box")).hasText("Choose a box, and no relay.");
            visit.forgive();
            visit.check("shut-in-terms");
            page.selectOption("#shutIn-box", "mesa-9-box");
            page.fill("#shutIn-expires", "10");
            page.fill("#shutIn-lastCall", "30");
            save(page);
            assertThat(page.locator("main")).containsText("Off: this site cannot be asked to shut in.");
            assertThat(page.locator("main")).containsText("less than 30 min");

            visit.open("/sites/mesa-9/shut-in/on?step=6");
            page.fill("#name", "Mesa 9");
            page.click("#on");
            page.click("#terms");
            assertThat(page.locator("#turns-off")).isVisible();
            page.fill("#shutIn-expires", "12");
            save(page);
            assertThat(page.locator("main")).containsText("Off: this site cannot be asked to shut in.");
        }
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void a_box_has_examples_for_readings_and_for_requests(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/boxes/mesa-9-box");
            page.locator("#example-readings > summary").click();
            page.locator("#example-requests > summary").click();
            assertThat(page.locator("#example-requests")).containsText("it is not a safety system");
            page.locator("#example-requests summary", new Page.LocatorOptions().setHasText("Arduino (ESP32)"))
                    .click();
            assertThat(page.locator("#example-requests pre").last()).containsText("BOX = \"mesa-9-box\"");
            visit.check("box-examples");
        }
    }

    @Test
    void says_in_spanish_what_is_wrong() {
        try (var visit = Visit.inSpanish(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open(TANK);
            page.locator("#fold-drift summary").click();
            page.fill("#drift-target", "8");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Guardar"))
                    .click();
            assertThat(page.locator("#wrong-drift-slack")).hasText("Tiene que estar: 0 o más.");
            visit.forgive();
            visit.check("point-fields-spanish");
        }
    }

    @Test
    void works_without_scripts() {
        try (var visit = Visit.withoutScripts(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open(TANK);
            page.locator("#fold-tank summary").click();
            page.selectOption("#tank-shape", "lying");
            assertThat(page.locator("#tank-height")).not().isVisible();
            page.fill("#tank-diameter", "8");
            page.locator("button.large").press("Enter");
            assertThat(page.locator("#wrong-tank-length")).hasText("This has to be there: above 0.");
            page.fill("#tank-length", "20");
            page.locator("button.large").press("Enter");

            assertThat(setup()).contains("shape: lying", "diameter: 8", "length: 20");
            visit.forgive();
        }
    }

    private static void open(Page page, String fold) {
        if (page.locator("#fold-" + fold + "[open]").count() == 0) {
            page.locator("#fold-" + fold + " summary").click();
        }
    }

    private static void save(Page page) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName("Save").setExact(true))
                .click();
    }

    private String setup() {
        return web.get("/api/v1/setup", Web.owner()).body();
    }

    private void read(String value) {
        String key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
        var answer = web.post(
                "/api/v1/readings",
                "application/json",
                "{\"point\": \"water-tank\", \"value\": " + value + ", \"unit\": \"ft\"}",
                "Authorization",
                "Bearer " + key);
        assertThat(answer.statusCode()).isEqualTo(202);
    }
}
