package yardlight.gateway.browser;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.IOException;
import java.net.ServerSocket;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** Passkeys, with an authenticator that is not written here: Chromium's virtual one. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.DEFINED_PORT)
class PasskeyIT {

    /** A passkey belongs to an address, port included, so the port is known before the gateway starts. */
    private static final int PORT = freePort();

    private static final Locator.WaitForOptions GONE =
            new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED);

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        registry.add("server.port", () -> PORT);
        registry.add("yardlight.public-url", () -> "http://localhost:" + PORT);
    }

    @BeforeEach
    void set_up() {
        new Web(PORT).put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner());
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void signs_in_without_a_password_once_it_was_added_and_not_any_more_when_it_was_removed(Look look) {
        String label = "the shop tablet, " + look.word();
        try (var visit = Visit.to(PORT, look)) {
            Page page = visit.page();
            plugIn(page);
            visit.signIn("owner");

            visit.open("/me/passkeys");
            page.fill("input[name=label]", label);
            page.click("#passkey-add button");
            page.getByText("Remove " + label).waitFor();
            visit.check("passkeys");
            signOut(page);

            page.click("#passkey");
            page.waitForURL("**/");
            visit.open("/me/passkeys");
            page.getByText("Remove " + label).click();
            page.getByText("Remove " + label).waitFor(GONE);
            signOut(page);

            page.click("#passkey");
            page.locator("#passkey-failed").waitFor();
            visit.forgive();
        }
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

    private static int freePort() {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
