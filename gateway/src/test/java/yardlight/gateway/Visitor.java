package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.Cookie;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Somebody with a browser: keeps its session and its cookies, and sends the token of each form. */
public final class Visitor {

    private static final String BROWSER = "text/html,application/xhtml+xml,*/*;q=0.8";

    private final Doors doors;
    private final String address;
    private final Map<String, Cookie> cookies = new LinkedHashMap<>();
    private MockHttpSession session = new MockHttpSession();

    public Visitor(Doors doors, String address) {
        this.doors = doors;
        this.address = address;
    }

    public MvcTestResult get(String path) {
        return send(doors.stranger(HttpMethod.GET, path));
    }

    /**
     * @param fields names and values by turns
     */
    public MvcTestResult post(String path, String... fields) {
        FormToken token = FormToken.of(get("/login"), cookies.get("XSRF-TOKEN"));
        var request = doors.stranger(HttpMethod.POST, path)
                .param("_csrf", token.value())
                .header("X-XSRF-TOKEN", token.value());
        for (int i = 0; i < fields.length; i += 2) {
            request = request.param(fields[i], fields[i + 1]);
        }
        return send(request);
    }

    public MvcTestResult trySignIn(String login, String password) {
        return post("/login", "username", login, "password", password);
    }

    public Visitor signIn(String login, String password) {
        assertThat(trySignIn(login, password)).hasStatus(302).hasHeader("Location", "/");
        return this;
    }

    /** Whether they are still let in. */
    public boolean isIn() {
        return get("/me").getResponse().getStatus() == 200;
    }

    public MockHttpSession session() {
        return session;
    }

    public Cookie cookie(String name) {
        return cookies.get(name);
    }

    private MvcTestResult send(MockMvcTester.MockMvcRequestBuilder request) {
        var sent = request.accept(BROWSER)
                .header("User-Agent", "Lantern/1.0")
                .session(session)
                .with(asked -> {
                    asked.setRemoteAddr(address);
                    asked.setRequestedSessionId(session.getId());
                    asked.setRequestedSessionIdValid(true);
                    return asked;
                });
        if (!cookies.isEmpty()) {
            sent = sent.cookie(cookies.values().toArray(Cookie[]::new));
        }
        MvcTestResult result = sent.exchange();
        for (Cookie cookie : result.getResponse().getCookies()) {
            cookies.put(cookie.getName(), cookie);
        }
        if (session.isInvalid()) {
            session = new MockHttpSession();
        }
        return result;
    }
}
