package yardlight.gateway.browser;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.gateway.GatewayTest;

/** Passkeys, with an authenticator that is not written here: Chromium's virtual one. */
class PasskeyIT extends SharedGateway {

    private static final Locator.WaitForOptions GONE =
            new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED);

    @ParameterizedTest
    @EnumSource(Look.class)
    void signs_in_without_a_password_once_it_was_added_and_not_any_more_when_it_was_removed(Look look) {
        String label = "the shop tablet, " + look.word();
        try (var visit = Visit.to(port, look)) {
            Page page = visit.page();
            plugIn(page);
            visit.signIn("owner");

            visit.open("/me/passkeys");
            visit.check("passkeys-confirm");
            confirm(page);
            page.fill("input[name=label]", label);
            page.click("#passkey-add button");
            page.getByText("Remove " + label).waitFor();
            visit.check("passkeys");
            signOut(page);

            page.click("#passkey");
            page.waitForURL("**/");
            visit.open("/me/passkeys");
            confirm(page);
            page.getByText("Remove " + label).click();
            page.getByText("Remove " + label).waitFor(GONE);
            signOut(page);

            page.click("#passkey");
            page.locator("#passkey-failed").waitFor();
            visit.forgive();
        }
    }

    private static void confirm(Page page) {
        page.fill("input[name=current]", GatewayTest.PASSWORD);
        page.click("form[action='/me/passkeys/confirm'] button");
    }

    private static void signOut(Page page) {
        page.click(".out button");
        page.waitForURL("**/login?out");
    }

    /** As the DevTools protocol has it: a phone with a fingerprint that is always the right one. */
    private static void plugIn(Page page) {
        CDPSession tools = page.context().newCDPSession(page);
        tools.send("WebAuthn.enable", new JsonObject());
        tools.send(
                "WebAuthn.addVirtualAuthenticator", JsonParser.parseString("""
                        {"options": {"protocol": "ctap2", "transport": "internal", "hasResidentKey": true,
                         "hasUserVerification": true, "isUserVerified": true, "automaticPresenceSimulation": true}}
                        """).getAsJsonObject());
    }
}
