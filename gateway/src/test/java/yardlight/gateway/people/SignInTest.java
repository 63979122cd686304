package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;

@GatewayTest
class SignInTest {

    private static final String BROWSER = "text/html,application/xhtml+xml,*/*;q=0.8";
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final Doors doors;

    SignInTest(Doors doors) {
        this.doors = doors;
    }

    @Test
    void is_where_a_browser_is_sent() {
        assertThat(doors.stranger(HttpMethod.GET, "/").accept(BROWSER))
                .hasStatus(302)
                .hasHeader("Location", "/login");
    }

    @Test
    void leaves_no_session_behind_for_a_stranger_who_only_looks() {
        MvcTestResult sent = doors.stranger(HttpMethod.GET, "/").accept(BROWSER).exchange();

        assertThat(sent.getRequest().getSession(false)).isNull();
        assertThat(page().getRequest().getSession(false)).isNull();
        assertThat(page().getResponse().getCookie("XSRF-TOKEN").isHttpOnly()).isTrue();
    }

    @Test
    void by_form_opens_a_session() throws Exception {
        MvcTestResult page = page();

        MvcTestResult result = doors.stranger(HttpMethod.POST, "/login")
                .cookie(page.getResponse().getCookies())
                .param("username", "owner")
                .param("password", GatewayTest.PASSWORD)
                .param("_csrf", token(page))
                .exchange();

        assertThat(result).hasStatus(302).hasHeader("Location", "/");
        var session = (MockHttpSession) result.getRequest().getSession(false);
        assertThat(session).isNotNull();
        assertThat(doors.stranger(HttpMethod.GET, "/").accept(BROWSER).session(session))
                .hasStatus(200);
    }

    @Test
    void without_the_token_of_its_form_is_refused() {
        MvcTestResult result = doors.stranger(HttpMethod.POST, "/login")
                .param("username", "owner")
                .param("password", GatewayTest.PASSWORD)
                .exchange();

        assertThat(result).hasStatus(403);
    }

    @Test
    void with_a_wrong_password_goes_back_and_says_so() throws Exception {
        MvcTestResult page = page();

        MvcTestResult result = doors.stranger(HttpMethod.POST, "/login")
                .cookie(page.getResponse().getCookies())
                .param("username", "owner")
                .param("password", "wrong")
                .param("_csrf", token(page))
                .exchange();

        assertThat(result).hasStatus(302).hasHeader("Location", "/login?wrong");
        assertThat(result.getRequest().getSession(false)).isNull();
        assertThat(doors.stranger(HttpMethod.GET, "/login?wrong").param("wrong", ""))
                .bodyText()
                .contains("That login or password is wrong.");
    }

    @Test
    void by_password_from_a_page_elsewhere_is_refused() {
        assertThat(doors.as("owner", HttpMethod.POST, "/api/v1/alarms/none/reset")
                        .header("Origin", "https://elsewhere.example"))
                .hasStatus(403);
        assertThat(doors.as("owner", HttpMethod.POST, "/api/v1/alarms/none/reset")
                        .header("Sec-Fetch-Site", "cross-site"))
                .hasStatus(403);
    }

    @Test
    void by_password_from_a_program_needs_no_token_and_leaves_no_session() {
        MvcTestResult result =
                doors.as("owner", HttpMethod.POST, "/api/v1/alarms/none/reset").exchange();

        assertThat(result).hasStatus(404);
        assertThat(result.getRequest().getSession(false)).isNull();
    }

    @Test
    void is_slowed_down_for_who_guesses_and_not_for_the_others() {
        for (int i = 0; i < 10; i++) {
            assertThat(guess("198.51.100.7")).isEqualTo(401);
        }

        assertThat(guess("198.51.100.7")).isEqualTo(429);
        assertThat(guess("198.51.100.8")).isEqualTo(401);
        assertThat(doors.as("hand", HttpMethod.GET, "/api/v1/alarms")).hasStatus(200);
    }

    private int guess(String address) {
        return doors.stranger(HttpMethod.GET, "/api/v1/alarms")
                .header("Authorization", "Basic aGFuZDpndWVzcw==")
                .with(request -> {
                    request.setRemoteAddr(address);
                    return request;
                })
                .exchange()
                .getResponse()
                .getStatus();
    }

    private MvcTestResult page() {
        return doors.stranger(HttpMethod.GET, "/login").exchange();
    }

    private static String token(MvcTestResult page) throws Exception {
        Matcher matcher = TOKEN.matcher(page.getResponse().getContentAsString());
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }
}
