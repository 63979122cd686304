package yardlight.gateway.boxsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UnsupportedEncodingException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.db.boxkey.BoxKeys;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

/** The page of a box, as its doors let it out. */
@GatewayTest
class BoxPageTest {

    private static final String PAGE = "/boxes/mesa-9-box";
    private static final Pattern KEY = Pattern.compile("id=\"key\"><code>([\\w-]{43})</code>");
    private static final Pattern AFTER = Pattern.compile("name=\"after\" value=\"(\\w*)\"");

    private final Doors doors;
    private final BoxKeys keys;
    private final TestGateway.InMemorySetup inForce;

    BoxPageTest(Doors doors, BoxKeys keys, TestGateway.InMemorySetup inForce) {
        this.doors = doors;
        this.keys = keys;
        this.inForce = inForce;
    }

    private String get(String login, String path) {
        MvcTestResult answer =
                doors.as(login, HttpMethod.GET, path).accept("text/html").exchange();
        assertThat(answer).hasStatusOk();
        return body(answer);
    }

    private MvcTestResult post(String path, String... fields) {
        var request = doors.as("owner", HttpMethod.POST, path).accept("text/html");
        for (int i = 0; i < fields.length; i += 2) {
            request = request.param(fields[i], fields[i + 1]);
        }
        return request.exchange();
    }

    private static String body(MvcTestResult answer) {
        try {
            return answer.getResponse().getContentAsString();
        } catch (UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String found(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        assertThat(matcher.find()).as(pattern + " in " + text).isTrue();
        return matcher.group(1);
    }

    @Test
    void shows_a_reader_the_box_and_nothing_that_changes_it() {
        assertThat(get("reader", PAGE))
                .contains("mesa-9-box", "It has not posted yet", "What arrives now")
                .doesNotContain("<form method", "/keys", "Authorization: Bearer", "name=\"feed\"");
        assertThat(get("reader", "/boxes"))
                .contains("href=\"/boxes/mesa-9-box\"")
                .doesNotContain("name=\"name\"");
    }

    @Test
    void shows_a_key_once_and_makes_no_second_one_when_it_is_loaded_again() {
        String after = found(AFTER, get("owner", PAGE));

        MvcTestResult made = post(PAGE + "/keys", "after", after, "others", "");
        MvcTestResult again = post(PAGE + "/keys", "after", after, "others", "");

        assertThat(made).hasStatusOk();
        assertThat(made.getResponse().getHeader("Cache-Control")).contains("no-store");
        String key = found(KEY, body(made));
        assertThat(body(made)).contains("Bearer " + key, "https://yardlight.example/api/v1/events");
        assertThat(again).hasStatus(303);
        assertThat(get("owner", PAGE)).doesNotContain(key).contains("KEY-FROM-THE-PAGE-OF-THE-BOX");
        assertThat(keys.of("mesa-9-box"))
                .filteredOn(one -> !one.id().equals("k1"))
                .hasSize(1);
    }

    @Test
    void is_there_only_for_a_box_that_is_set_up() {
        assertThat(post("/boxes/none")).hasStatus(404);
        assertThat(post("/boxes/none/keys")).hasStatus(404);
        assertThat(post("/boxes/none/remove")).hasStatus(404);
        assertThat(post(PAGE + "/keys/none/revoke")).hasStatus(404);
        assertThat(doors.as("reader", HttpMethod.GET, "/boxes/none/live").exchange())
                .hasStatus(404);
    }

    /** A box that is set up under the same name later is another one. */
    @Test
    void takes_a_box_away_together_with_its_keys() {
        Setup before = inForce.setup();
        inForce.set(before.withBox("spare", "mesa-9"));
        post("/boxes/spare/keys", "after", "");
        assertThat(keys.of("spare"))
                .singleElement()
                .matches(key -> key.revokedAt().isEmpty());

        MvcTestResult removed = post("/boxes/spare/remove", "seen", "0");

        assertThat(removed).hasStatus(303);
        assertThat(keys.of("spare"))
                .singleElement()
                .matches(key -> key.revokedAt().isPresent());
        inForce.set(before);
    }

    @Test
    void shows_what_a_box_gets_wrong_with_the_reason() {
        assertThat(get("reader", PAGE + "/live"))
                .contains("Nothing has come in")
                .doesNotContain("<html");

        doors.post(
                "/api/v1/events",
                "application/json",
                "{\"point\": \"tank\", \"condition\": \"high\", \"state\": \"on\"}");

        assertThat(get("reader", PAGE + "/live"))
                .contains("refused", "422 events", "state must be active or normal: on");
    }
}
