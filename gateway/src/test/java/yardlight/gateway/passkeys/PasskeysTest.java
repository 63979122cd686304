package yardlight.gateway.passkeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.db.passkey.Passkey;
import yardlight.db.passkey.Passkeys;
import yardlight.gateway.Doors;
import yardlight.gateway.FormToken;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.Visitor;

/** What the gateway asks of passkeys, and whose are whose. A real one signs in in {@code PasskeyIT}. */
@GatewayTest
class PasskeysTest {

    private static final String MADE_UP =
            "{\"id\": \"AAAA\", \"rawId\": \"AAAA\", \"response\": {\"authenticatorData\": \"AAAA\","
                    + " \"clientDataJSON\": \"AAAA\", \"signature\": \"AAAA\"}, \"credType\": \"public-key\","
                    + " \"clientExtensionResults\": {}}";

    private final Doors doors;
    private final Passkeys passkeys;

    PasskeysTest(Doors doors, Passkeys passkeys) {
        this.doors = doors;
        this.passkeys = passkeys;
    }

    @Test
    void are_asked_of_a_stranger_without_a_session_and_have_to_verify_their_user() {
        MvcTestResult asked = doors.stranger(HttpMethod.POST, "/webauthn/authenticate/options")
                .exchange();

        assertThat(asked)
                .hasStatus(200)
                .bodyText()
                .contains("\"rpId\":\"yardlight.example\"", "\"userVerification\":\"required\"", "\"challenge\":");
        assertThat(asked.getRequest().getSession(false)).isNull();
        var cookie = asked.getResponse().getCookie("passkey-try");
        assertThat(cookie.isHttpOnly()).isTrue();
        assertThat(cookie.getAttribute("SameSite")).isEqualTo("Strict");
    }

    @Test
    void that_are_made_up_open_nothing() {
        MvcTestResult asked = doors.stranger(HttpMethod.POST, "/webauthn/authenticate/options")
                .exchange();

        MvcTestResult answered = doors.stranger(HttpMethod.POST, "/login/webauthn")
                .cookie(asked.getResponse().getCookie("passkey-try"))
                .contentType("application/json")
                .content(MADE_UP)
                .exchange();

        assertThat(answered).hasStatus(401);
        assertThat(answered.getRequest().getSession(false)).isNull();
        assertThat(doors.stranger(HttpMethod.POST, "/login/webauthn")
                        .contentType("application/json")
                        .content(MADE_UP))
                .hasStatus(401);
    }

    @Test
    void are_added_by_whoever_is_signed_in_and_by_nobody_else() {
        Visitor hand = new Visitor(doors, "198.51.100.70").signIn("hand", GatewayTest.PASSWORD);

        assertThat(hand.post("/webauthn/register/options")).hasStatus(403);
        assertThat(hand.post("/webauthn/register")).hasStatus(403);
        assertThat(hand.post("/me/passkeys/confirm", "current", "not this one at all"))
                .hasStatus(422);
        assertThat(hand.post("/webauthn/register/options")).hasStatus(403);
        confirm(hand);

        assertThat(hand.post("/webauthn/register/options"))
                .hasStatus(200)
                .bodyText()
                .contains("\"name\":\"hand\"", "\"residentKey\":\"required\"", "\"userVerification\":\"required\"");
        assertThat(doors.stranger(HttpMethod.POST, "/webauthn/register/options"))
                .hasStatus(401);
    }

    @Test
    void of_somebody_else_cannot_be_removed() {
        Visitor hand = new Visitor(doors, "198.51.100.71").signIn("hand", GatewayTest.PASSWORD);
        confirm(hand);
        hand.post("/webauthn/register/options");
        String handle = passkeys.handle("hand").orElseThrow();
        passkeys.keep(passkey("one-of-hands", handle));
        Visitor reader = new Visitor(doors, "198.51.100.72").signIn("reader", GatewayTest.PASSWORD);
        confirm(reader);
        reader.post("/webauthn/register/options");

        assertThat(reader.post("/me/passkeys/remove", "id", "one-of-hands")).hasStatus(404);
        assertThat(hand.get("/me/passkeys")).bodyText().contains("the shop tablet");
        assertThat(hand.post("/me/passkeys/remove", "id", "one-of-hands")).hasStatus(302);
        assertThat(passkeys.of(handle)).isEmpty();
    }

    @Test
    void are_removed_by_whoever_gave_their_password_a_moment_ago_and_by_nobody_who_found_the_page_open() {
        Visitor hand = new Visitor(doors, "198.51.100.74").signIn("hand", GatewayTest.PASSWORD);
        confirm(hand);
        hand.post("/webauthn/register/options");
        passkeys.keep(passkey("two-of-hands", passkeys.handle("hand").orElseThrow()));
        Visitor found = new Visitor(doors, "198.51.100.75").signIn("hand", GatewayTest.PASSWORD);

        assertThat(found.get("/me/passkeys"))
                .bodyText()
                .contains("your password once more")
                .doesNotContain("Remove the");
        assertThat(found.post("/me/passkeys/confirm", "current", "not this one at all"))
                .hasStatus(422)
                .bodyText()
                .contains("id=\"current-wrong\"");
        assertThat(found.post("/me/passkeys/remove", "id", "two-of-hands")).hasStatus(403);
        assertThat(hand.post("/me/passkeys/remove", "id", "two-of-hands")).hasStatus(302);
    }

    @Test
    void are_not_added_in_a_session_by_a_password_that_is_only_sent_along() {
        Visitor hand = new Visitor(doors, "198.51.100.76").signIn("hand", GatewayTest.PASSWORD);
        FormToken token = FormToken.of(hand.get("/login"), hand.cookie("XSRF-TOKEN"));

        assertThat(doors.stranger(HttpMethod.POST, "/webauthn/register/options")
                        .session(hand.session())
                        .header("Authorization", "Basic aGFuZDp3cm9uZw==")
                        .cookie(token.cookie())
                        .header("X-XSRF-TOKEN", token.value()))
                .hasStatus(403);
    }

    private static void confirm(Visitor visitor) {
        assertThat(visitor.post("/me/passkeys/confirm", "current", GatewayTest.PASSWORD))
                .hasStatus(302);
    }

    @Test
    void say_where_they_work_when_a_page_is_opened_by_another_address() {
        Visitor hand = new Visitor(doors, "198.51.100.73").signIn("hand", GatewayTest.PASSWORD);

        assertThat(hand.get("/me/passkeys")).bodyText().contains("Open this page by https://yardlight.example.");
    }

    private static Passkey passkey(String id, String handle) {
        Instant now = TestGateway.NOW;
        var none = new byte[0];
        return new Passkey(
                id, handle, "the shop tablet", none, 0, true, "internal", false, false, none, none, now, now);
    }
}
