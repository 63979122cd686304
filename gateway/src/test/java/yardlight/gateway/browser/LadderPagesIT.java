package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.Web;

/** A ladder is built, rehearsed, looked at, saved and taken back; somebody else gets in between. */
class LadderPagesIT extends SharedGateway {

    private static final String FORM = "application/x-www-form-urlencoded";

    @ParameterizedTest
    @EnumSource(Look.class)
    void edit_a_ladder_and_see_the_rehearsal_change(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/ladders");
            visit.check("ladders");
            page.click("text=night");
            ask(page);
            move(page);
            visit.check("ladder");
            mistype(page);

            page.fill("#wait-1", "7");
            page.click("#look");
            assertThat(page.locator("main")).containsText("rung 3, calls: everyone, taken away");
            assertThat(page.locator("main")).containsText("no more");
            visit.check("ladder-look");
            page.click("#save");
            assertThat(page.locator("main")).containsText("Saved.");
            assertThat(page.locator("#wait-0")).hasValue("7");

            page.click("text=All edits");
            visit.check("edits");
            page.locator("text=Take it back").first().click();
            assertThat(page.locator("main")).containsText("Taken back.");
            visit.open("/ladders/night");
            assertThat(page.locator(".rung")).hasCount(3);
        }
    }

    private static void ask(Page page) {
        Locator rehearsal = page.locator("#rehearsal");
        page.fill("input[name=at]", "2027-01-09T02:10");
        assertThat(rehearsal).containsText("Sat, Jan 9, 2:10 AM: Mesa 9 WATER TANK high-high");
        assertThat(rehearsal.locator(".hours li").nth(0)).hasText("2:10 AM Ana Ruelas by text");
        assertThat(rehearsal.locator(".hours li").nth(1)).hasText("2:15 AM Ana Ruelas by text");

        page.selectOption("select[name=priority]", "medium");
        assertThat(rehearsal).containsText("Ana Ruelas: quiet hours, waits until they are over");
        assertThat(rehearsal.locator(".reading")).hasText("Ben Tully hears it first, 2:10 AM");
    }

    /** By the keyboard and by the thumb; what was typed before stays. */
    private static void move(Page page) {
        Locator rehearsal = page.locator("#rehearsal");
        page.locator("#up-1").press("Enter");
        assertThat(page.locator(".rung select").nth(0)).hasValue("roster:crew");
        assertThat(page.locator("#up-1")).isFocused();
        page.fill("#wait-1", "12:30");
        page.click("#away-2");
        assertThat(page.locator(".rung")).hasCount(2);
        assertThat(page.locator("#wait-1")).hasValue("12:30");
        page.selectOption("#call-1-0", "ana");
        assertThat(rehearsal).containsText("nobody would hear it at once");
        assertThat(rehearsal.locator(".hours-week .later").first()).isVisible();
    }

    private static void mistype(Page page) {
        page.fill("#wait-1", "soon");
        assertThat(page.locator("#rehearsal")).containsText("must be minutes such as 5 or 1:30");
        page.click("#look");
        assertThat(page.locator("#wrong-wait-1")).isVisible();
        assertThat(page.locator("#wait-1")).hasValue("soon");
    }

    @ParameterizedTest
    @EnumSource(
            value = Look.class,
            names = {"PHONE_AT_NIGHT", "DESK_BY_DAY"})
    void second_editor(Look look) {
        web.put(
                "/api/v1/logins/cleo",
                "application/json",
                "{\"role\": \"owner\", \"password\": \"" + GatewayTest.PASSWORD + "\"}",
                Web.owner());
        try (var first = Visit.to(port, look).signIn("owner");
                var second = Visit.to(port, look).signIn("cleo")) {
            Page one = first.open("/ladders/night");
            Page two = second.open("/ladders/night");
            two.fill("#rounds-0", "3");
            one.fill("#wait-0", "9");
            one.click("#look");
            one.click("#save");
            assertThat(one.locator("main")).containsText("Saved.");

            two.click("#look");

            assertThat(two.locator("#overtaken")).containsText("owner has changed this ladder meanwhile");
            assertThat(two.locator("#overtaken")).containsText("rung 1, wait: 5 min → 9 min");
            assertThat(two.locator("#rounds-0")).hasValue("3");
            second.check("ladder-overtaken");

            two.fill("#wait-0", "9");
            two.click("#look");
            assertThat(two.locator("main")).containsText("rung 1, rounds: 2 → 3");
            assertThat(two.locator("main")).not().containsText("wait");
            two.click("#save");
            assertThat(two.locator("main")).containsText("Saved.");
            first.open("/ladders/night");
            assertThat(one.locator("#wait-0")).hasValue("9");
            assertThat(one.locator("#rounds-0")).hasValue("3");
        }
    }

    @Test
    void who_saves_after_somebody_else_has_saved_is_told_too() {
        try (var first = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner");
                var second = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page one = first.open("/ladders/night");
            Page two = second.open("/ladders/night");
            two.fill("#rounds-0", "3");
            two.click("#look");
            one.fill("#wait-0", "9");
            one.click("#look");
            one.click("#save");
            assertThat(one.locator("main")).containsText("Saved.");

            two.click("#save");

            assertThat(two.locator("#overtaken")).containsText("rung 1, wait: 5 min → 9 min");
            assertThat(two.locator("#rounds-0")).hasValue("3");
        }
    }

    @Test
    void a_new_ladder_is_built_and_one_that_a_site_uses_stays() {
        try (var visit = Visit.inSpanish(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open("/ladders");
            page.fill("input[name=id]", "Night shift");
            page.click("text=Armarla");
            assertThat(page.locator("#wrong-id")).isVisible();
            assertThat(page.locator("input[name=id]")).hasValue("Night shift");

            page.fill("input[name=id]", "day");
            page.click("text=Armarla");
            assertThat(page.locator("#rehearsal")).containsText("debe llamar a alguien");
            assertThat(page.locator("#wrong-call-n0")).hasCount(0);
            page.click("#look");
            assertThat(page.locator("#wrong-call-n0")).hasText("debe llamar a alguien");
            page.selectOption("#call-n0-0", "ben");
            assertThat(page.locator("#rehearsal")).containsText("Ben Tully por mensaje");
            visit.check("ladder-new-spanish");
            page.click("#look");
            page.click("#save");
            assertThat(page.locator("main")).containsText("Guardada.");
            page.click("#remove");
            assertThat(page.locator("main")).containsText("La escalera se quitó.");

            visit.open("/ladders/night");
            page.click("#remove");
            assertThat(page.locator("main")).containsText("la usa Mesa 9. Primero dele otra escalera a ese sitio.");
        }
    }

    @Test
    void who_may_only_read_rehearses_and_changes_nothing() {
        web.put(
                "/api/v1/logins/regulator",
                "application/json",
                "{\"role\": \"reader\", \"password\": \"" + GatewayTest.PASSWORD + "\"}",
                Web.owner());
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("regulator")) {
            Page page = visit.open("/ladders/night");
            assertThat(page.locator("#look")).hasCount(0);
            assertThat(page.locator("#wait-0")).isDisabled();
            page.selectOption("select[name=priority]", "low");
            assertThat(page.locator("#rehearsal")).containsText("Ben Tully by text");
            visit.check("ladder-reader");
        }
    }

    @Test
    void all_of_it_works_without_a_script() {
        String rungs = "seen=0&edited=1&rung=0&call-0=ben&wait-0=5&rounds-0=1&rung=1&call-1=ana&wait-1=4&rounds-1=1"
                + "&endsWhen=acknowledged&again=0&where=mesa-9/water-tank&condition=low&priority=critical&at=2027-01-09T02:10";

        Assertions.assertThat(web.post("/ladders/night/rehearsal", FORM, rungs, Web.owner())
                        .body())
                .contains("Jan 9, 2:10 AM", "<b>2:15 AM</b>", "id=\"bench\"");
        Assertions.assertThat(web.post("/ladders/night", FORM, rungs + "&act=up.1", Web.owner())
                        .body())
                .containsSubsequence("value=\"up.1\"", "value=\"up.0\"", "<b>2:14 AM</b>");
        String seen = web.get("/api/v1/setup", Web.owner())
                .headers()
                .firstValue("ETag")
                .orElseThrow()
                .replace("\"", "");
        Assertions.assertThat(web.post(
                                "/ladders/night",
                                FORM,
                                rungs.replace("seen=0", "seen=" + seen) + "&ask-1=1&act=look",
                                Web.owner())
                        .body())
                .contains("name=\"wait-1\"", "name=\"ask-1\"")
                .doesNotContain("name=\"ask-0\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "edited=1",
                "edited=1&rung=0&rung=0&rung=%00&rung=../x&act=down.0",
                "edited=1&rung=0&call-0=%00&call-0=roster:&wait-0=99999:99&rounds-0=-1&again=999999999&act=look",
                "edited=1&rung=0&call-0=ana&wait-0=5&rounds-0=100&again=100&endsWhen=acknowledged&priority=critical&act=look",
                "edited=1&seen=999999999&rung=0&call-0=ana&act=save",
                "seen=x&where=//&condition=%0a&priority=urgent&at=9999999999-01-01T00:00&act=look",
                "where=mesa-9/%F0%9F%92%A1&at=2027-03-14T02:30&act=up."
            })
    void nothing_that_is_sent_breaks_it(String body) {
        for (String path : List.of("/ladders/night", "/ladders/night/rehearsal", "/ladders", "/ladders/none")) {
            Assertions.assertThat(web.post(path, FORM, body, Web.owner()).statusCode())
                    .as(path)
                    .isLessThan(500);
        }
        for (String path : List.of("/edits?before=x", "/edits?before=-1", "/edits?before=0", "/ladders/NIGHT!?new")) {
            Assertions.assertThat(web.get(path, Web.owner()).statusCode())
                    .as(path)
                    .isLessThan(500);
        }
    }
}
