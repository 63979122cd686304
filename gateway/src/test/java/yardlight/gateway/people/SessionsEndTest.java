package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.HttpSession;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.springframework.boot.web.server.autoconfigure.ServerProperties;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpSession;
import yardlight.db.person.Sittings;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.Visitor;

/** Sessions that end: NIST SP 800-63B-4 2.2.3 (read in its second public draft), OWASP ASVS 5.0 7.2.4, 7.3.1, 7.3.2. */
@GatewayTest
class SessionsEndTest {

    private final Doors doors;
    private final AtomicReference<Instant> now = new AtomicReference<>(TestGateway.NOW);
    private final OpenSittings sittings;
    private final ServerProperties server;

    SessionsEndTest(Doors doors, Sittings kept, ServerProperties server) {
        this.doors = doors;
        this.server = server;
        this.sittings = new OpenSittings(kept, (InstantSource) now::get);
    }

    /** AAL2: "overall timeout ... SHOULD be no more than 24 hours". */
    @Test
    void twenty_four_hours_after_the_sign_in_however_much_is_asked_for() {
        HttpSession session = begun();

        for (int minutes = 20; minutes < 24 * 60; minutes += 20) {
            after(Duration.ofMinutes(minutes));
            assertThat(sittings.goesOn(session))
                    .as("after " + minutes + " minutes")
                    .isTrue();
        }

        after(Duration.ofHours(24));
        assertThat(sittings.goesOn(session)).isFalse();
    }

    /** AAL2: "The inactivity timeout SHOULD be no more than 1 hour"; the container's own is the same. */
    @Test
    void when_nothing_is_asked_for_for_half_an_hour() {
        HttpSession session = begun();

        after(Duration.ofMinutes(32));

        assertThat(sittings.goesOn(session)).isFalse();
        assertThat(server.getServlet().getSession().getTimeout()).isEqualTo(OpenSittings.IDLE);
    }

    /** ASVS 5.0, 7.2.4: a new session token on user authentication. */
    @Test
    void and_begin_under_another_id_than_the_browser_came_with() {
        var visitor = new Visitor(doors, "198.51.100.50");
        String before = visitor.session().getId();

        visitor.signIn("hand", GatewayTest.PASSWORD);

        assertThat(visitor.session().getId()).isNotEqualTo(before);
        assertThat(visitor.isIn()).isTrue();
    }

    @Test
    void with_the_sign_out() {
        Visitor visitor = new Visitor(doors, "198.51.100.51").signIn("hand", GatewayTest.PASSWORD);
        MockHttpSession session = visitor.session();
        assertThat(sittings.all()).anyMatch(one -> one.address().equals("198.51.100.51"));

        visitor.post("/logout");

        assertThat(session.isInvalid()).isTrue();
        assertThat(sittings.all()).noneMatch(one -> one.address().equals("198.51.100.51"));
    }

    /** OWASP ASVS 5.0, 14.3.1. Browsers heed it over TLS only. */
    @Test
    void and_the_browser_forgets_what_it_kept_of_pages() {
        assertThat(doors.stranger(HttpMethod.POST, "/logout").secure(true)).hasHeader("Clear-Site-Data", "\"cache\"");
    }

    @Test
    void when_they_are_of_nobody_s_making() {
        var session = new MockHttpSession();

        assertThat(sittings.goesOn(session)).isFalse();
    }

    private HttpSession begun() {
        var request = new MockHttpServletRequest();
        request.setSession(new MockHttpSession());
        sittings.begin("hand", request);
        return request.getSession(false);
    }

    private void after(Duration time) {
        now.set(TestGateway.NOW.plus(time));
    }
}
