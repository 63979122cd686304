package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.net.http.HttpResponse;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import yardlight.db.person.People;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.Web;

/**
 * Ana asks for her turn to be taken over, and Ben says yes or no; both are owners and each has a browser of their own. That he
 * gets a text about it is for {@code SwapIT}: here other tests use up what he may be texted in an hour.
 */
class AskingPagesIT extends SharedGateway {

    private static final String JSON = "application/json";
    private static final String TURN = "/turns/crew/swap?at=2040-12-17T07:00&day=2040-12-20";

    private final People people;

    @Autowired
    AskingPagesIT(People people) {
        this.people = people;
    }

    @BeforeEach
    void ana_and_ben_sign_in_by_logins_of_their_own() {
        for (String who : new String[] {"ana", "ben"}) {
            HttpResponse<String> made = web.put(
                    "/api/v1/logins/" + who,
                    JSON,
                    "{\"role\": \"owner\", \"contact\": \"" + who + "\", \"password\": \"" + GatewayTest.PASSWORD
                            + "\"}",
                    Web.owner());
            Assertions.assertThat(made.statusCode()).as(made.body()).isBetween(200, 204);
        }
    }

    /** Each further sign-in of an owner would be a text to them. */
    @AfterEach
    void they_have_no_logins_any_more() {
        people.remove("ana");
        people.remove("ben");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void ben_takes_the_turn_that_ana_asks_for_and_is_called_by_the_ladder_then(Look look) {
        try (var ana = Visit.to(port, look).signIn("ana");
                var ben = Visit.to(port, look).signIn("ben")) {
            assertThat(rung(ben, "12:10 PM")).hasText("12:10 PM Ana Ruelas by text");
            int code = ask(ana);

            Page his = ben.open("/turns");
            ben.check("turns-asked");
            Locator asked = asked(his);
            assertThat(asked).containsText("number " + code);
            asked.locator("select").selectOption(new SelectOption().setLabel("Ben Tully"));
            asked.getByText("takes it", new Locator.GetByTextOptions().setExact(true))
                    .click();
            his.waitForURL("**/turns");

            assertThat(asked(his)).hasCount(0);
            assertThat(his.locator("main"))
                    .containsText("Ben Tully from Thu, Dec 20, 2040, 7:00 AM to Fri, Dec 21, 2040, 7:00 AM");
            ben.check("turns-taken");
            Page hers = ana.open("/turns?from=2040-12-17");
            assertThat(hers.locator(".relief").first()).containsText("Ben Tully from 7:00 AM for Ana Ruelas");
            assertThat(rung(ana, "12:10 PM")).hasText("12:10 PM Ben Tully by text");
        }
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void the_page_says_that_ben_refused_and_ana_asks_no_more(Look look) {
        try (var ana = Visit.to(port, look).signIn("ana")) {
            int code = ask(ana);
            HttpResponse<String> no = web.post(
                    "/api/v1/replies",
                    JSON,
                    "{\"from\": \"+1 575 555 0102\", \"text\": \"NO " + code + "\"}",
                    "Authorization",
                    "Bearer " + GatewayTest.REPLIES_KEY);
            Assertions.assertThat(no.body()).contains("you do not take it");

            Page page = ana.open("/turns");
            assertThat(asked(page)).containsText("No: Ben Tully.");
            ana.check("turns-refused");
            asked(page)
                    .getByText("Ask no more", new Locator.GetByTextOptions().setExact(true))
                    .click();

            page.waitForURL("**/turns");
            assertThat(asked(page)).hasCount(0);
            ana.open("/turns?from=2040-12-17");
            assertThat(page.locator("main")).not().containsText("for Ana Ruelas");
            assertThat(rung(ana, "12:10 PM")).hasText("12:10 PM Ana Ruelas by text");
        }
    }

    /** @return the number of the question, as the page of turns has it */
    private static int ask(Visit ana) {
        Page page = ana.open(TURN);
        assertThat(page.getByLabel("From")).hasValue("2040-12-20T07:00");
        page.getByText("Ask the others", new Page.GetByTextOptions().setExact(true))
                .click();
        page.waitForURL("**/turns");
        String words = asked(page).textContent();
        return Integer.parseInt(words.replaceAll("(?s).*number (\\d+),.*", "$1"));
    }

    private static Locator asked(Page page) {
        return page.locator("li", new Page.LocatorOptions().setHasText("asks who takes it"));
    }

    /** Who is called at that time for an alarm at noon of the day that is asked for. */
    private static Locator rung(Visit visit, String time) {
        Page page = visit.open("/ladders/night");
        page.locator("input[name=at]").fill("2040-12-20T12:00");
        assertThat(page.locator("#rehearsal")).containsText("Dec 20");
        return page.locator("#rehearsal .hours li", new Page.LocatorOptions().setHasText(time))
                .first();
    }
}
