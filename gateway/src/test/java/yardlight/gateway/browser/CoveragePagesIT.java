package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.gateway.Web;
import yardlight.gateway.setup.Documents;

/** An owner looks whether anybody would hear, and is asked before an hour is left in which nobody would. */
class CoveragePagesIT extends SharedGateway {

    private static final String FORM = "application/x-www-form-urlencoded";

    private static final String ONLY_CREW = Documents.CONTRACT
            .replace("- {call: [ana], wait: PT5M, rounds: 2}", "- {call: [\"roster:crew\"], wait: PT5M}")
            .replace("- {call: [everyone], wait: PT15M, rounds: 3}", "");

    @BeforeEach
    void one_ladder_without_everyone() {
        setUp(ONLY_CREW);
    }

    private String board() {
        return web.get("/", Web.owner()).body();
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void the_board_names_a_gap_and_its_page_says_why(Look look) {
        Awaitility.await()
                .atMost(Duration.ofSeconds(20))
                .untilAsserted(
                        () -> Assertions.assertThat(board()).contains("nobody would hear low and medium alarms"));
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/");
            assertThat(page.locator("main")).containsText("more times");
            visit.check("now-with-a-gap");

            page.locator("a[href='/sites/mesa-9/coverage']").click();
            Locator low = page.locator("#group-low");
            assertThat(low).containsText("nobody would hear it at once");
            assertThat(low.locator(".why").first()).hasText("quiet hours let nothing of this priority through");
            // By night the first one is "from now to".
            assertThat(low.locator(".gaps li").nth(1)).containsText("9:00 PM to");
            assertThat(low.locator(".hours-week .later").first()).isVisible();
            assertThat(page.locator("#group-high")).containsText("At every hour somebody is called at once.");
            low.locator("details:has(.who) summary").click();
            assertThat(low.locator(".who")).containsText("at once (sms-mail not proven");
            visit.check("coverage");
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Look.class,
            names = {"PHONE_AT_NIGHT", "DESK_BY_DAY"})
    void quiet_hours_that_leave_nobody_are_saved_with_a_second_press(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/people/ben/edit");
            press(page, "Add quiet hours");
            press(page, "Save");

            assertThat(page.locator("#opens")).containsText("This would open a gap");
            assertThat(page.locator("#opens")).containsText("Mesa 9: nobody would hear low and medium alarms at once");
            assertThat(page.getByLabel("From")).hasValue("21:00");
            visit.forgive();
            visit.check("person-edit-opens-a-gap");
            Assertions.assertThat(web.get("/people/ben", Web.owner()).body()).doesNotContain("9:00 PM to 6:00 AM");

            press(page, "Save it all the same");
            page.waitForURL("**/people/ben");
            assertThat(page.locator("main")).containsText("9:00 PM to 6:00 AM, every day");
        }
    }

    @Test
    void a_ladder_is_looked_at_with_the_gap_that_it_opens_and_saved_from_there() {
        setUp(Documents.CONTRACT);
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open("/ladders/night");
            page.click("#away-2");
            assertThat(page.locator(".rung")).hasCount(2);
            page.click("#away-1");
            assertThat(page.locator(".rung")).hasCount(1);
            page.click("#look");
            assertThat(page.locator("#opens")).containsText("Mesa 9: nobody would hear low and medium alarms at once");
            assertThat(page.locator("#save")).hasText("Save it all the same");
            visit.check("ladder-look-opens-a-gap");
            page.click("#save");
            assertThat(page.locator("main")).containsText("Saved.");
        }
    }

    /** A program that skips the look is asked as well. */
    @Test
    void a_ladder_that_was_not_looked_at_is_not_saved_with_a_gap() {
        setUp(Documents.CONTRACT);
        int seen = version();
        String form = "seen=" + seen
                + "&edited=1&rung=0&call-0=ana&wait-0=5&rounds-0=1&endsWhen=acknowledged&again=0&act=save";

        Assertions.assertThat(
                        web.post("/ladders/night", FORM, form, Web.owner()).body())
                .contains("This would open a gap");

        Assertions.assertThat(version()).isEqualTo(seen);
    }

    private int version() {
        return Integer.parseInt(web.get("/api/v1/setup", Web.owner())
                .headers()
                .firstValue("ETag")
                .orElseThrow()
                .replace("\"", ""));
    }

    @Test
    void a_swap_that_puts_a_sleeper_on_is_saved_with_a_second_press() {
        try (var visit = Visit.inSpanish(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open("/turns/crew/swap?at=" + turn(1));
            page.locator("#contact").selectOption("ana");
            page.locator("#edit > button").click();
            assertThat(page.locator("#opens")).containsText("Esto abriría un hueco");
            visit.forgive();
            visit.check("swap-opens-a-gap-spanish");
            page.locator("#opens button").click();
            page.waitForURL("**/turns");
            Assertions.assertThat(web.get("/api/v1/setup", Web.owner()).body()).contains("contact: ana");
        }
    }

    @Test
    void so_is_the_end_of_a_swap_that_leaves_a_sleeper_alone() {
        String from = turn(0).plusDays(1).toString();
        String to = turn(0).plusDays(3).toString();
        setUp(ONLY_CREW.replace("2026-12-24T07:00", from).replace("2026-12-26T07:00", to));
        String form = "seen=" + version() + "&from=" + from + "&to=" + to + "&contact=ben";

        String asked = web.post("/turns/crew/swap/off", FORM, form, Web.owner()).body();

        Assertions.assertThat(asked).contains("This would open a gap", "formaction=\"/turns/crew/swap/off\"");
        Matcher sign = Pattern.compile("name=\"agreed\" value=\"([^\"]+)\"").matcher(asked);
        Assertions.assertThat(sign.find()).isTrue();
        Assertions.assertThat(web.post("/turns/crew/swap/off", FORM, form + "&agreed=" + sign.group(1), Web.owner())
                        .statusCode())
                .isEqualTo(303);
    }

    /** A turn that is weeks ahead: Ana's for 0, Ben's for 1. */
    private static LocalDateTime turn(int whose) {
        LocalDateTime first = LocalDateTime.parse("2026-11-23T07:00");
        long weeks = ChronoUnit.WEEKS.between(first, LocalDateTime.now()) + 4;
        return first.plusWeeks(weeks % 2 == whose ? weeks : weeks + 1);
    }

    @Test
    void whoever_leaves_an_hour_behind_is_taken_out_with_a_second_press() {
        setUp(ONLY_CREW
                .replace("order: [ana, ben]", "order: [ana]")
                .replace(
                        "reliefs: [{from: \"2026-12-24T07:00\", to: \"2026-12-26T07:00\", contact: ben}]",
                        "reliefs: []")
                .replace("rungs:", "rungs:\n      - {call: [ben, ana], wait: PT5M}"));
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open("/people/ben/remove");
            press(page, "Take out");
            assertThat(page.locator("#opens")).containsText("Mesa 9: nobody would hear low and medium alarms at once");
            visit.forgive();
            visit.check("person-remove-opens-a-gap");
            page.locator("#opens button").click();
            page.waitForURL("**/people");
            assertThat(page.locator("main")).not().containsText("Ben");

            visit.open("/edits");
            page.locator("text=Take it back").first().click();
            assertThat(page.locator("main")).containsText("Taken back.");
        }
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }
}
