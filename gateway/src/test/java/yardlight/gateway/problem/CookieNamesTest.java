package yardlight.gateway.problem;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.ServletException;
import org.junit.jupiter.api.Test;
import org.springframework.boot.web.server.Ssl;
import org.springframework.boot.web.server.autoconfigure.ServerProperties;
import org.springframework.mock.web.MockServletContext;

/** RFC 6265bis, 4.1.3: what the prefixes ask for; OWASP ASVS 5.0, 3.3.1 and 3.3.3: that cookies have them. */
class CookieNamesTest {

    @Test
    void are_bound_to_the_host_where_there_is_tls() throws ServletException {
        var context = new MockServletContext();
        var names = new CookieNames(server(true, ""));

        names.sessionCookie().onStartup(context);

        assertThat(names.of("device-ana")).isEqualTo("__Host-device-ana");
        assertThat(context.getSessionCookieConfig().getName()).isEqualTo("__Host-session");
    }

    @Test
    void are_bound_to_tls_below_a_path_because_the_longer_prefix_wants_the_path_of_all() {
        assertThat(new CookieNames(server(true, "/yardlight")).of("device-ana")).isEqualTo("__Secure-device-ana");
    }

    @Test
    void are_plain_over_plain_http_where_a_browser_would_refuse_the_others() throws ServletException {
        var context = new MockServletContext();
        var names = new CookieNames(server(false, ""));

        names.sessionCookie().onStartup(context);

        assertThat(names.of("device-ana")).isEqualTo("device-ana");
        assertThat(context.getSessionCookieConfig().getName()).isNull();
    }

    private static ServerProperties server(boolean tls, String path) {
        var server = new ServerProperties();
        server.getServlet().setContextPath(path);
        if (tls) {
            var ssl = new Ssl();
            ssl.setBundle("yardlight");
            server.setSsl(ssl);
        }
        return server;
    }
}
