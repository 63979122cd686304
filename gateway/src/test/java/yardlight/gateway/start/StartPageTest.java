package yardlight.gateway.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UnsupportedEncodingException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

/** The first start, on a gateway with nothing set up and no way out of it. */
@GatewayTest
class StartPageTest {

    private final Doors doors;
    private final TestGateway.InMemorySetup inForce;
    private final Setup before;

    StartPageTest(Doors doors, TestGateway.InMemorySetup inForce) {
        this.doors = doors;
        this.inForce = inForce;
        this.before = inForce.setup();
    }

    @BeforeEach
    void empty() {
        inForce.set(Setup.EMPTY);
    }

    @AfterEach
    void put_back() {
        inForce.set(before);
    }

    private MvcTestResult get(String login, String path, String... headers) {
        var request = doors.as(login, HttpMethod.GET, path).accept("text/html");
        for (int i = 0; i < headers.length; i += 2) {
            request = request.header(headers[i], headers[i + 1]);
        }
        return request.exchange();
    }

    private static String body(MvcTestResult answer) {
        assertThat(answer).hasStatusOk();
        try {
            return answer.getResponse().getContentAsString();
        } catch (UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void begins_by_itself_for_the_owner_and_can_be_left() {
        assertThat(get("owner", "/")).hasStatus3xxRedirection().hasRedirectedUrl("/start");
        assertThat(get("owner", "/?later")).hasStatusOk();
        assertThat(get("owner", "/", "HX-Request", "true")).hasStatusOk();
        assertThat(get("hand", "/")).hasStatusOk();
        inForce.set(before);
        assertThat(get("owner", "/")).hasStatusOk();
    }

    @Test
    void says_which_properties_are_missing_and_goes_on() {
        assertThat(body(get("owner", "/start")))
                .contains("Nothing goes out of this gateway yet", "spring.mail.host", "yardlight.mail.from")
                .contains("sms-mail (not set up)", "action=\"/start/you\"")
                .doesNotContain("value=\"push\"");
        assertThat(body(get("owner", "/start", "Accept-Language", "es"))).contains("no sale nada");
    }

    @Test
    void begins_with_the_person_whatever_step_is_asked_for() {
        assertThat(body(get("owner", "/start?step=ladder"))).contains("action=\"/start/you\"");
        assertThat(body(get("owner", "/start?step=nonsense"))).contains("action=\"/start/you\"");
    }

    @Test
    void keeps_what_was_typed_and_says_what_is_wrong_beside_each_field() {
        MvcTestResult answer = doors.as("owner", HttpMethod.POST, "/start/you")
                .accept("text/html")
                .param("name", "Ana <Ruelas>")
                .param("zone", "Mars/Base")
                .param("language", "en")
                .param("channel", "mail")
                .param("address", "not an address")
                .exchange();

        assertThat(body(answer))
                .contains("value=\"Ana &lt;Ruelas&gt;\"", "value=\"not an address\"")
                .contains("id=\"address-wrong\"", "id=\"zone-wrong\"")
                .doesNotContain("id=\"name-wrong\"");
    }
}
