package yardlight.gateway.push;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UnsupportedEncodingException;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.HttpMethod;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;

/** The page on which a phone subscribes, and what a browser needs beside it. */
@GatewayTest
@TestPropertySource(properties = "yardlight.push.contact=mailto:yard@ranch.example")
class PhonePageTest {

    private static final Pattern SCRIPT = Pattern.compile("<script src=\"([^\"]+)\" defer></script>");
    private static final Pattern KEY = Pattern.compile("data-key=\"([\\w-]+)\"");

    private final Doors doors;

    PhonePageTest(Doors doors) {
        this.doors = doors;
    }

    @ParameterizedTest
    @ValueSource(strings = {"owner", "hand"})
    void shows_whoever_may_answer_the_button_and_gives_their_browser_the_public_key(String login) {
        MvcTestResult page = page(login);

        assertThat(page).hasStatusOk();
        assertThat(text(page)).contains("Notify me on this phone", "blocked in this browser", "Add to Home Screen");
        Matcher key = KEY.matcher(text(page));
        assertThat(key.find()).isTrue();
        assertThat(Base64.getUrlDecoder().decode(key.group(1)))
                .as("an uncompressed point, RFC 8292 3.2")
                .hasSize(65)
                .startsWith(4);
    }

    @Test
    void offers_the_owner_to_add_it_to_somebody_and_nobody_else() {
        assertThat(text(page("owner")))
                .contains("action=\"/phone/lines\"", "<option value=\"ana\">Ana Ruelas</option>");
        assertThat(text(page("hand")))
                .contains("give it to the owner")
                .doesNotContain("/phone/lines", "Ana Ruelas", "<option");
    }

    @Test
    void is_not_for_who_may_only_read() {
        assertThat(page("reader")).hasStatus(403);
        assertThat(doors.stranger(HttpMethod.GET, "/phone").accept("text/html").exchange())
                .hasStatus(302)
                .hasHeader("Location", "/login");
    }

    /** The script that subscribes is this page's own; the others every page has. */
    @Test
    void may_run_our_scripts_and_worker_and_none_that_stands_in_a_page() {
        MvcTestResult page = page("hand");

        assertThat(policy(page))
                .startsWith("default-src 'none';")
                .contains("script-src 'self'", "worker-src 'self'", "manifest-src 'self'")
                .doesNotContain("unsafe");
        assertThat(SCRIPT.matcher(text(page)).results().map(found -> found.group(1)))
                .as("scripts, each from a file")
                .hasSize(text(page).split("<script", -1).length - 1)
                .contains("/phone.js")
                .allMatch(source -> source.startsWith("/"));
        assertThat(text(page)).doesNotContain("style=", "onclick");
    }

    @Test
    void speaks_spanish_to_a_browser_that_does() {
        MvcTestResult page = doors.as("hand", HttpMethod.GET, "/phone")
                .header("Accept-Language", "es-MX,es;q=0.9")
                .exchange();

        assertThat(text(page))
                .contains("<html lang=\"es\">", "Avisarme en este teléfono")
                .doesNotContain("Notify me");
    }

    @Test
    void speaks_english_to_any_other() {
        MvcTestResult page = doors.as("hand", HttpMethod.GET, "/phone")
                .header("Accept-Language", "fr")
                .exchange();

        assertThat(text(page)).contains("<html lang=\"en\">", "Notify me on this phone");
    }

    /** The worker's folder is the root, so that its scope may be the page (Service Workers 1, path restriction). */
    @ParameterizedTest
    @ValueSource(strings = {"/phone.js", "/phone-worker.js"})
    void has_its_scripts_at_the_root_as_scripts_and_for_a_browser_that_is_not_signed_in(String script) {
        MvcTestResult answer = doors.stranger(HttpMethod.GET, script).exchange();

        assertThat(answer).hasStatusOk().hasHeader("X-Content-Type-Options", "nosniff");
        assertThat(answer.getResponse().getContentType()).startsWith("text/javascript");
    }

    @Test
    void registers_the_worker_for_itself_alone() {
        String script = text(doors.stranger(HttpMethod.GET, "/phone.js").exchange());

        assertThat(script)
                .contains("new URL(\"phone-worker.js\", location)", "scope: new URL(\"phone\", location).pathname");
    }

    @Test
    void can_be_put_on_a_home_screen() {
        assertThat(doors.stranger(HttpMethod.GET, "/phone-app.json").exchange())
                .hasStatusOk()
                .hasContentTypeCompatibleWith("application/json")
                .bodyJson()
                .extractingPath("$.display")
                .isEqualTo("standalone");
    }

    @Test
    void is_named_on_the_page_of_a_contact() {
        assertThat(text(doors.as("hand", HttpMethod.GET, "/people/ana").exchange()))
                .contains("href=\"/phone\"");
    }

    private MvcTestResult page(String login) {
        return doors.as(login, HttpMethod.GET, "/phone").exchange();
    }

    private static String policy(MvcTestResult result) {
        return result.getResponse().getHeader("Content-Security-Policy");
    }

    private static String text(MvcTestResult result) {
        try {
            return result.getResponse().getContentAsString();
        } catch (UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }
}
