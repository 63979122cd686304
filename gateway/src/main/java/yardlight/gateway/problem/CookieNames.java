package yardlight.gateway.problem;

import org.springframework.boot.web.server.Ssl;
import org.springframework.boot.web.server.autoconfigure.ServerProperties;
import org.springframework.boot.web.servlet.ServletContextInitializer;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Component;

/**
 * How cookies are called. Where the gateway speaks TLS, and so nothing else, their names begin with {@code __Host-}: a browser then
 * takes them over TLS only, from this very host, and no other host of its domain can plant one (RFC 6265bis, 4.1.3.2). Below a path of
 * its own it is {@code __Secure-}, for the longer one wants the path of all. Plain HTTP has neither.
 */
@Component
public class CookieNames {

    private static final String SESSION = "session";

    private final String prefix;

    CookieNames(ServerProperties server) {
        String path = server.getServlet().getContextPath();
        boolean whole = path == null || path.isEmpty() || path.equals("/");
        this.prefix = !Ssl.isEnabled(server.getSsl()) ? "" : whole ? "__Host-" : "__Secure-";
    }

    /** The name of a cookie as the browser gets it. */
    public String of(String name) {
        return prefix + name;
    }

    /** Over plain HTTP the container's own name stays. */
    @Bean
    ServletContextInitializer sessionCookie() {
        return context -> {
            if (!prefix.isEmpty()) {
                context.getSessionCookieConfig().setName(of(SESSION));
            }
        };
    }
}
