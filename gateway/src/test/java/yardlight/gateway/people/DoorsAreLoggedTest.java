package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.http.HttpMethod;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.Visitor;

/** OWASP ASVS 5.0, 16.3.1 to 16.3.3: what the process writes of those whom it keeps out. Who came in is in the record. */
@GatewayTest
@ExtendWith(OutputCaptureExtension.class)
class DoorsAreLoggedTest {

    private final Doors doors;

    DoorsAreLoggedTest(Doors doors) {
        this.doors = doors;
    }

    @Test
    void a_wrong_password_with_the_login_and_the_address_and_without_the_password(CapturedOutput said) {
        var visitor = new Visitor(doors, "198.51.100.90");

        for (int i = 0; i < 10; i++) {
            visitor.trySignIn("hand", "not the lamp at the end");
        }

        assertThat(said.getOut())
                .contains("a wrong password for hand from 198.51.100.90")
                .contains("a wrong password for hand from 198.51.100.90; further ones have to wait")
                .doesNotContain("not the lamp at the end");
    }

    @Test
    void what_a_login_may_not_do(CapturedOutput said) {
        assertThat(doors.as("reader", HttpMethod.PUT, "/api/v1/setup")).hasStatus(403);

        assertThat(said.getOut())
                .contains("PUT /api/v1/setup refused to reader from 127.0.0.1: this login may not do that");
    }

    @Test
    void a_passkey_that_is_none(CapturedOutput said) {
        assertThat(doors.stranger(HttpMethod.POST, "/login/webauthn")
                        .contentType("application/json")
                        .content(
                                "{\"id\": \"AAAA\", \"rawId\": \"AAAA\", \"response\": {\"authenticatorData\": \"AAAA\","
                                        + " \"clientDataJSON\": \"AAAA\", \"signature\": \"AAAA\"},"
                                        + " \"credType\": \"public-key\", \"clientExtensionResults\": {}}"))
                .hasStatus(401);

        assertThat(said.getOut()).contains("a passkey from 127.0.0.1 was refused");
    }
}
