package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.gateway.Web;
import yardlight.gateway.setup.Documents;

/** What happens at a site, as somebody follows it: from the first page to the alarm, the site, its points and the record. */
class YardPagesIT extends SharedGateway {

    private static final String JSON = "application/json";

    private String key = "";

    @BeforeEach
    void box_at_work() {
        key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", JSON, "", Web.owner()))
                .get("key")
                .asString();
        post(
                "/api/v1/heartbeats",
                "{\"battery\": 12.6, \"signal\": -87, \"feeds\": {\"wells\": true, \"pump\": true}}");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void an_alarm_is_followed_from_the_first_page_to_its_end(Look look) {
        // The same one again and again would chatter.
        String point = "tank-" + look.word();
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.page();
            assertThat(page.locator("#now")).containsText("All is well");
            visit.check("now-calm");

            event(point, "active");
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("high-high"))
                    .click();
            assertThat(page.locator("#stands .standing")).containsText("Nobody has it, high");
            press(page, "I have it");
            assertThat(page.locator("#stands .standing")).containsText("owner has it");

            page.locator("summary", new Page.LocatorOptions().setHasText("Write a note"))
                    .click();
            page.fill("#note", "the float switch sticks");
            press(page, "Keep the note");
            page.locator("summary", new Page.LocatorOptions().setHasText("Put it aside"))
                    .click();
            page.selectOption("#for", "PT4H");
            page.fill("#reason", "welding");
            visit.check("alarm-put-aside");
            page.locator("button", new Page.LocatorOptions().setHasText("Put it aside"))
                    .click();
            assertThat(page.locator("#stands .standing")).containsText("Shelved until");
            press(page, "Put it back now");
            assertThat(page.locator("#happened")).containsText("owner has it, answered on the page");
            assertThat(page.locator("#happened")).containsText("Note by owner: the float switch sticks");
            assertThat(page.locator("#happened")).containsText("owner put it aside for 4 h: welding");
            visit.check("alarm");

            event(point, "normal");
            assertThat(page.locator("#happened")).containsText("It is over");
            assertThat(page.locator("#stands .standing")).containsText("It is over");
        }
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void a_point_that_wants_it_is_set_up_and_a_site_taken_out_of_service(Look look) {
        String point = "heater-" + look.word();
        event(point, "active");
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/sites");
            visit.check("sites");
            page.getByRole(
                            AriaRole.LINK,
                            new Page.GetByRoleOptions().setName("Mesa 9").setExact(true))
                    .click();
            assertThat(page.locator("#site")).containsText("battery 12.6 V, signal -87 dBm");
            assertThat(page.locator("#site")).containsText("Wants setting up");
            visit.check("site");

            visit.open("/sites/mesa-9/points/" + point);
            page.fill("#name", "HEATER");
            page.fill("input[name=onDelay]", "a while");
            press(page, "Save");
            assertThat(page.locator("#wrong-onDelay")).hasText("A whole number, or nothing.");
            assertThat(page.locator("#name")).hasValue("HEATER");
            visit.forgive();
            visit.check("point-wrong");
            page.fill("input[name=onDelay]", "5");
            page.selectOption("#priority", "low");
            press(page, "Save");
            assertThat(page.locator("#site")).containsText("HEATER");

            page.locator("summary", new Page.LocatorOptions().setHasText("Take the whole site out"))
                    .click();
            press(page, "Take it out now");
            assertThat(page.locator("#site")).containsText("by owner.");
            assertThat(page.locator("#site")).containsText("Out of service");
            visit.check("site-out-of-service");
            press(page, "Put the site back in service");
            assertThat(page.locator("#site")).not().containsText("Out of service:");
        }
        event(point, "normal");
        web.post("/api/v1/alarms/mesa-9." + point + ".high-high.1/acknowledge", JSON, "{}", Web.owner());
    }

    @Test
    void who_saves_a_point_that_somebody_else_changed_sees_what_changed() {
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open("/sites/mesa-9/points/water-tank");
            page.fill("#name", "BRINE TANK");
            web.put(
                    "/api/v1/setup",
                    "application/yaml",
                    Documents.CONTRACT.replace("WATER TANK", "SALT WATER TANK"),
                    Web.owner());

            press(page, "Save");

            assertThat(page.locator(".changed")).containsText("WATER TANK → SALT WATER TANK");
            assertThat(page.locator("#name")).hasValue("BRINE TANK");
            visit.forgive();
            visit.check("point-second-editor");
            press(page, "Save");
            assertThat(page.locator("#site")).containsText("BRINE TANK");
        }
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void the_record_is_read_by_what_one_asks_for(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/record?what=setup");
            assertThat(page.locator(".record li").first()).containsText("setup changed by owner");
            visit.check("record");
            page.locator(".record .number").first().click();
            assertThat(page.locator("main")).containsText("person owner");
            visit.check("line");

            visit.open("/record?from=yesterday");
            assertThat(page.locator("#wrong-from")).containsText("A date and a time");
        }
    }

    @Test
    void everything_can_be_read_in_spanish() {
        event("pump-house", "active");
        try (var visit = Visit.inSpanish(port, Look.PHONE_BY_DAY).signIn("owner")) {
            assertThat(visit.page().locator("#now")).containsText("Nadie se encarga, alta");
            visit.check("now-spanish");
            visit.open("/alarms/mesa-9.pump-house.high-high.1");
            assertThat(visit.page().locator("#happened")).containsText("Empezó: 18.4 ft (límite 18.0)");
            visit.check("alarm-spanish");
            visit.open("/sites/mesa-9");
            assertThat(visit.page().locator("#site")).containsText("batería 12.6 V");
            visit.open("/record");
            assertThat(visit.page().locator("h1")).hasText("Registro");
        }
        event("pump-house", "normal");
        web.post("/api/v1/alarms/mesa-9.pump-house.high-high.1/acknowledge", JSON, "{}", Web.owner());
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }

    private void event(String point, String state) {
        post(
                "/api/v1/events",
                "{\"point\": \"" + point + "\", \"condition\": \"high-high\", \"state\": \"" + state
                        + "\", \"priority\": \"high\", \"value\": 18.4, \"limit\": 18.0, \"unit\": \"ft\"}");
    }

    private void post(String path, String body) {
        web.post(path, JSON, body, "Authorization", "Bearer " + key);
    }
}
