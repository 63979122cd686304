package yardlight.demo.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.ScriptedGateway;

class BrowserTest {

    private static final String PAGE =
            "<form method=post action=/a/tok><input type=hidden name=_csrf value=c1><button>I have it</button></form>";

    private final ScriptedGateway gateway = new ScriptedGateway();

    @AfterEach
    void close() {
        gateway.close();
    }

    @Test
    void opens_the_page_and_presses_its_button_with_the_cookies_it_got() throws InterruptedException {
        gateway.answers(200, Map.of("Set-Cookie", "visit=9; Path=/; HttpOnly"), PAGE)
                .answers(200, "<p>Thank you.</p>");

        assertThat(Browser.answer(gateway.address().resolve("/a/tok"))).isEmpty();

        assertThat(gateway.asked())
                .extracting(ScriptedGateway.Asked::method, ScriptedGateway.Asked::path, ScriptedGateway.Asked::body)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("GET", "/a/tok", ""),
                        org.assertj.core.groups.Tuple.tuple("POST", "/a/tok", "_csrf=c1"));
        assertThat(gateway.asked().get(1).cookie()).contains("visit=9");
    }

    @Test
    void says_so_when_the_link_is_used_up() throws InterruptedException {
        gateway.answers(200, "<p>Ben answered at 2:26 AM.</p>");

        assertThat(Browser.answer(gateway.address().resolve("/a/tok"))).contains("the page has no button any more");
    }

    @Test
    void says_so_when_the_button_is_refused() throws InterruptedException {
        gateway.answers(200, PAGE).answers(403, "");

        assertThat(Browser.answer(gateway.address().resolve("/a/tok"))).contains("the button was answered with 403");
    }

    @Test
    void says_so_when_nobody_is_there() throws InterruptedException {
        URI nobody = URI.create("http://localhost:" + FreePort.any() + "/a/tok");

        assertThat(Browser.answer(nobody))
                .hasValueSatisfying(why -> assertThat(why).startsWith("the page did not open"));
    }
}
