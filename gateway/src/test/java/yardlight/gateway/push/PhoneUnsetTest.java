package yardlight.gateway.push;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UnsupportedEncodingException;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;

/** The page on a gateway on which push is not set up. */
@GatewayTest
class PhoneUnsetTest {

    private final Doors doors;

    PhoneUnsetTest(Doors doors) {
        this.doors = doors;
    }

    @Test
    void says_what_the_owner_has_to_set_and_has_no_button() throws UnsupportedEncodingException {
        String page = doors.as("hand", HttpMethod.GET, "/phone")
                .exchange()
                .getResponse()
                .getContentAsString();

        assertThat(page).contains("yardlight.push.contact").doesNotContain("id=\"subscribe\"", "data-key");
    }
}
