package yardlight.gateway.people;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.util.HashMap;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.security.web.authentication.WebAuthenticationDetails;

/** From where and with what somebody signs in. */
final class DeviceDetails extends WebAuthenticationDetails {

    private static final long serialVersionUID = 1L;
    private static final int MOST = 20;
    private static final int LONGEST_AGENT = 200;
    private static final int LONGEST_ADDRESS = 64;

    private final HashMap<String, String> cookies = new HashMap<>();
    private final String agent;
    private final boolean program;

    DeviceDetails(HttpServletRequest request) {
        super(request);
        Cookie[] all = request.getCookies() == null ? new Cookie[0] : request.getCookies();
        for (Cookie cookie : all) {
            int name = cookie.getName().indexOf(DeviceCookies.PREFIX);
            if (name >= 0 && cookies.size() < MOST) {
                cookies.put(cookie.getName().substring(name + DeviceCookies.PREFIX.length()), cookie.getValue());
            }
        }
        this.agent = shortened(request.getHeader(HttpHeaders.USER_AGENT), LONGEST_AGENT);
        this.program = request.getHeader(HttpHeaders.AUTHORIZATION) != null;
    }

    private static String shortened(String text, int most) {
        String clean =
                text == null ? "" : text.replaceAll("[^\\x20-\\x7e]", " ").strip();
        return clean.substring(0, Math.min(most, clean.length()));
    }

    /** The cookie that was given to this browser for a login, unproven. */
    Optional<String> cookie(String login) {
        return Optional.ofNullable(cookies.get(login));
    }

    /** What it says it is; up to 200 printable characters of ASCII. */
    String agent() {
        return agent;
    }

    String address() {
        return shortened(getRemoteAddress(), LONGEST_ADDRESS);
    }

    /** Whether a password came with the request, as curl sends it, and not by the form. */
    boolean isProgram() {
        return program;
    }

    @Override
    public boolean equals(Object other) {
        return super.equals(other) && other instanceof DeviceDetails details && cookies.equals(details.cookies);
    }

    @Override
    public int hashCode() {
        return super.hashCode();
    }
}
