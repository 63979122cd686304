package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import java.net.URI;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.gateway.GatewayTest;

/** The pages at the doors: signing in, inviting somebody, coming in by the invitation, one's own page. */
class DoorPagesIT extends SharedGateway {

    private static final Pattern INVITATION = Pattern.compile("/join/[\\w-]+");

    @ParameterizedTest
    @EnumSource(Look.class)
    void an_invited_hand_comes_in_and_sees_what_a_hand_may(Look look) {
        String login = "ben-" + look.ordinal();
        try (var owner = Visit.to(port, look).signIn("owner")) {
            owner.open("/logins");
            owner.page().selectOption("form[action='/logins/invitations'] select[name=contact]", "ben");
            owner.page().click("form[action='/logins/invitations'] button");
            Matcher link = INVITATION.matcher(owner.page().locator("main").innerText());
            org.assertj.core.api.Assertions.assertThat(link.find()).isTrue();
            owner.check("logins");

            try (var hand = Visit.to(port, look)) {
                come(hand, link.group(), login);
                hand.open("/me");
                assertThat(hand.page().locator("h1")).hasText(login);
                hand.check("me");
                ownCalendar(hand);
                hand.open("/silences");
                hand.check("silences");
                hand.open("/phone");
                hand.check("phone");
            }

            owner.open("/logins");
            assertThat(owner.page().locator("main")).containsText(login);
        }
    }

    /** Ben makes an address of his own, then another one that ends the first, and then there is none. */
    private void ownCalendar(Visit hand) {
        hand.page().getByText("Calendar of your turns").click();
        assertThat(hand.page().locator("main")).containsText("There is no address.");
        hand.page().getByText("Make an address").click();
        String first = path(hand);
        hand.check("own-calendar");
        org.assertj.core.api.Assertions.assertThat(web.get(first).body()).contains("NAME:Turns of Ben Tully");

        hand.open("/me/calendar").getByText("Make a new address").click();
        String second = path(hand);
        org.assertj.core.api.Assertions.assertThat(web.get(first).statusCode()).isEqualTo(404);
        org.assertj.core.api.Assertions.assertThat(web.get(second).statusCode()).isEqualTo(200);

        hand.page().getByText("Revoke the address").click();
        assertThat(hand.page().locator("main")).containsText("There is no address.");
        org.assertj.core.api.Assertions.assertThat(web.get(second).statusCode()).isEqualTo(404);
    }

    private static String path(Visit visit) {
        return URI.create(visit.page().locator("p.address").textContent()).getPath();
    }

    private static void come(Visit visit, String link, String login) {
        Page page = visit.open(link);
        page.fill("input[name=login]", login);
        page.fill("input[name=password]", "short");
        page.click("main button[type=submit]");
        assertThat(page.locator("#password-wrong")).isVisible();
        assertThat(page.locator("input[name=login]")).hasValue(login);
        visit.check("join");
        // The browser says that the form was not taken.
        visit.forgive();
        page.fill("input[name=password]", GatewayTest.PASSWORD);
        page.click("main button[type=submit]");
        page.waitForURL("**/login**");

        page.fill("input[name=username]", login);
        page.fill("input[name=password]", "not this one");
        page.click("main button[type=submit]");
        assertThat(page.locator("#wrong")).isVisible();
        visit.check("login");
        visit.signIn(login);
    }
}
