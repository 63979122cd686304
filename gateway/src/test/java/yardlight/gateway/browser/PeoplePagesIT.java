package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The people, their turns and the paths to them, as the owner sees to them from a phone or a desk. */
class PeoplePagesIT extends SharedGateway {

    @ParameterizedTest
    @EnumSource(Look.class)
    void somebody_new_is_added_with_a_line_and_quiet_hours(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/people");
            visit.check("people");
            press(page, "New person");

            page.getByLabel("Name").fill("Cleo Díaz");
            page.getByLabel("Channel").selectOption("mail");
            page.getByLabel("Address").fill("cleo at ranch");
            press(page, "Save");
            assertThat(page.getByLabel("Name")).hasValue("Cleo Díaz");
            assertThat(page.getByLabel("Address")).hasAttribute("aria-invalid", "true");
            assertThat(page.getByLabel("Address")).hasValue("cleo at ranch");
            visit.forgive();

            page.getByLabel("Address").fill("cleo@ranch.example");
            press(page, "Add quiet hours");
            assertThat(page.getByLabel("From")).hasValue("21:00");
            visit.check("person-edit");
            press(page, "Save");

            page.waitForURL("**/people/cleo-diaz");
            assertThat(page.locator("main")).containsText("9:00 PM to 6:00 AM, every day");
            assertThat(page.getByRole(AriaRole.IMG)).isVisible();
            visit.check("person");
            visit.open("/people/cleo-diaz/remove");
            visit.check("person-remove");
            press(page, "Take out");
            page.waitForURL("**/people");
            assertThat(page.locator("main")).not().containsText("Cleo");
        }
    }

    @Test
    void the_second_editor_sees_what_the_first_changed_and_keeps_what_they_typed() {
        try (var first = Visit.to(port, Look.DESK_BY_DAY).signIn("owner");
                var second = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page one = first.open("/people/ana/edit");
            Page other = second.open("/people/ana/edit");
            one.getByLabel("Texts an hour at most").fill("7");
            press(one, "Save");
            one.waitForURL("**/people/ana");

            other.getByLabel("Name").fill("Ana R.");
            press(other, "Save");

            assertThat(other.locator(".changed")).containsText("texts an hour: 20 → 7");
            assertThat(other.getByLabel("Name")).hasValue("Ana R.");
            second.check("person-overtaken");
            press(other, "Save");
            other.waitForURL("**/people/ana");
            assertThat(other.locator("h1")).hasText("Ana R.");
            second.forgive();
        }
    }

    @Test
    void who_was_taken_out_meanwhile_does_not_come_back_by_a_form_that_was_still_open() {
        try (var first = Visit.to(port, Look.DESK_BY_DAY).signIn("owner");
                var second = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page one = first.open("/new-person");
            one.getByLabel("Name").fill("Dee Okafor");
            one.getByLabel("Channel").selectOption("mail");
            one.getByLabel("Address").fill("dee@ranch.example");
            press(one, "Save");
            one.waitForURL("**/people/dee-okafor");
            Page other = second.open("/people/dee-okafor/edit");
            other.getByLabel("Name").fill("Dee O.");
            first.open("/people/dee-okafor/remove");
            press(one, "Take out");
            one.waitForURL("**/people");

            press(other, "Save");

            assertThat(other.locator("main")).containsText("This person was taken out meanwhile.");
            assertThat(other.getByLabel("Name")).hasValue("Dee O.");
            second.forgive();
            second.check("person-gone");
            first.open("/people");
            assertThat(one.locator("main")).not().containsText("Dee");
            press(other, "Save");
            other.waitForURL("**/people/dee-o");
            second.open("/people/dee-o/remove");
            press(other, "Take out");
        }
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void a_day_of_a_turn_is_swapped_by_tapping_it_and_the_swap_taken_off_again(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/turns?from=2040-12-10");
            assertThat(page.locator("main")).containsText("Ben Tully until 7:00 AM");
            visit.check("turns");

            page.locator(".week li")
                    .filter(new Locator.FilterOptions().setHasText("Wed, Dec 12"))
                    .locator("a")
                    .click();
            assertThat(page.locator("main")).containsText("Ben Tully has the turn from Mon, Dec 10, 2040, 7:00 AM");
            press(page, "Thu, Dec 13");
            assertThat(page.getByLabel("From")).hasValue("2040-12-13T07:00");
            assertThat(page.getByLabel("To", new Page.GetByLabelOptions().setExact(true)))
                    .hasValue("2040-12-14T07:00");
            page.getByLabel("Who takes it").selectOption("ana");
            visit.check("swap");
            press(page, "Swap");

            page.waitForURL("**/turns");
            visit.open("/turns?from=2040-12-10");
            assertThat(page.locator(".relief").first()).containsText("Ana Ruelas from 7:00 AM for Ben Tully");
            assertThat(page.locator("main"))
                    .containsText("Ana Ruelas from Thu, Dec 13, 2040, 7:00 AM to Fri, Dec 14, 2040, 7:00 AM");
            visit.check("turns-swapped");
            page.locator("li", new Page.LocatorOptions().setHasText("Dec 13, 2040, 7:00 AM to"))
                    .getByText("Take this swap off")
                    .click();
            page.waitForURL("**/turns");
            visit.open("/turns?from=2040-12-10");
            assertThat(page.locator("main")).not().containsText("for Ben Tully");
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Look.class,
            names = {"PHONE_BY_DAY", "DESK_AT_NIGHT"})
    void a_roster_is_made_changed_and_taken_away(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/new-roster");
            page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill("Days");
            page.getByLabel("First turn begins").fill("2026-12-01T06:00");
            page.getByLabel("A turn is this long").fill("0");
            page.getByLabel("Turn 1", new Page.GetByLabelOptions().setExact(true))
                    .selectOption("ben");
            press(page, "Save");
            assertThat(page.getByLabel("A turn is this long")).hasAttribute("aria-invalid", "true");
            visit.forgive();
            page.getByLabel("A turn is this long").fill("12");
            page.getByLabel("Counted in").selectOption("hours");
            visit.check("roster-edit");
            press(page, "Save");
            page.waitForURL("**/turns");
            visit.open("/turns?from=2026-12-01");
            assertThat(page.locator("main")).containsText("Roster days");

            visit.open("/turns/crew/edit");
            press(page, "Take this roster away");
            assertThat(page.locator("main")).containsText("ladder night, rung 2");
            visit.forgive();
            visit.open("/turns/days/edit");
            press(page, "Take this roster away");
            page.waitForURL("**/turns");
            assertThat(page.locator("main")).not().containsText("Roster days");
        }
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void each_path_says_how_it_stands_and_a_test_is_sent_by_a_line_of_it(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/paths");

            assertThat(page.locator("main")).containsText("by the property yardlight.modem.port.");
            assertThat(page.locator("main"))
                    .containsText("It is set up by the properties yardlight.smpp.host and yardlight.smpp.system-id.");
            visit.check("paths");
        }
    }

    @Test
    void a_test_goes_by_the_line_that_was_chosen_and_the_page_comes_back() {
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open("/paths");

            page.getByLabel("Send a test: Ben Tully, line 1").click();
            page.waitForURL("**/paths");
            page.getByLabel("Send a test: Ben Tully, line 1").click();

            page.waitForURL("**/test");
            assertThat(page.locator(".changed")).containsText("this line was tested a moment ago");
            visit.forgive();
        }
    }

    @Test
    void the_last_one_on_a_rung_is_not_taken_out_and_the_page_says_where() {
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open("/people/ana/remove");

            assertThat(page.locator("main")).containsText("ladder night, rung 1");
            assertThat(page.getByText("Take out", new Page.GetByTextOptions().setExact(true)))
                    .hasCount(0);
            visit.check("person-last");
        }
    }

    @Test
    void the_pages_speak_spanish() {
        try (var visit = Visit.inSpanish(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open("/people/ana");

            assertThat(page.locator("html")).hasAttribute("lang", "es");
            assertThat(page.locator("main"))
                    .containsText("De 21:00 a 6:00, todos los días; sí pasan: altas y críticas");
            visit.check("person-es");
        }
    }

    private static void press(Page page, String name) {
        page.locator("main")
                .getByText(name, new Locator.GetByTextOptions().setExact(true))
                .first()
                .click();
    }
}
