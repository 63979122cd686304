package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.gateway.Web;

/** Somebody who is asked later: from the record to the reports, their files and the figures of the month. */
class ReportPagesIT extends SharedGateway {

    @ParameterizedTest
    @EnumSource(Look.class)
    void a_report_is_chosen_and_taken_along_and_the_month_is_looked_at(Look look) throws IOException {
        String point = "line-" + look.word();
        post(point, "active");
        post(point, "normal");
        web.post("/api/v1/alarms/mesa-9." + point + ".high.1/acknowledge", "application/json", "{}", Web.owner());
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/record");
            follow(page, "Reports: who was told");
            page.selectOption("select[name=site]", "mesa-9");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Choose"))
                    .click();
            visit.check("reports");
            assertThat(file(page, "#pdf")).startsWith("%PDF-");
            assertThat(file(page, "#csv")).startsWith("what,utc,local").contains(point, "log-head");

            follow(page, "How the alarms were");
            assertThat(page.locator("main")).containsText("Most in any ten minutes");
            page.locator("summary").click();
            assertThat(page.locator("main")).containsText("that occurred");
            visit.check("performance");

            page = visit.open("/reports");
            follow(page, "What it costs people");
            assertThat(page.locator("main")).containsText("At night is from 22:00 to 6:00");
            visit.check("burden");
        }
    }

    @Test
    void the_page_of_an_alarm_has_its_report_in_spanish_too() throws IOException {
        post("line-es", "active");
        try (var visit = Visit.inSpanish(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open("/alarms/mesa-9.line-es.high.1");
            String link = "a[href*='notification.pdf']";
            assertThat(page.locator(link)).containsText("A quién se avisó de ella");
            assertThat(file(page, link)).startsWith("%PDF-");
            visit.open("/reports/performance?from=2026-12&to=2026-11");
            assertThat(page.locator("#wrong-to")).containsText("No antes del primer mes.");
            visit.check("performance-es");
        }
        post("line-es", "normal");
        web.post("/api/v1/alarms/mesa-9.line-es.high.1/acknowledge", "application/json", "{}", Web.owner());
    }

    private static void follow(Page page, String link) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(link)).click();
    }

    /** How what a link leads to begins, and all of it if it is a text. */
    private static String file(Page page, String link) throws IOException {
        Download download = page.waitForDownload(() -> page.locator(link).click());
        return new String(Files.readAllBytes(download.path()), StandardCharsets.UTF_8);
    }

    private void post(String point, String state) {
        String key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
        web.post(
                "/api/v1/events",
                "application/json",
                "{\"point\": \"" + point + "\", \"condition\": \"high\", \"state\": \"" + state + "\"}",
                "Authorization",
                "Bearer " + key);
    }
}
