package yardlight.gateway.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Component;
import yardlight.db.secret.Secrets;
import yardlight.gateway.problem.CookieNames;

/**
 * Marks a browser in which somebody has signed in, as OWASP's "Slow Down Online Guessing Attacks with Device Cookies" has
 * it: 128 random bits and a MAC over them and the login. It opens nothing; it only tells such a browser from a stranger's.
 * Each login has a cookie of its own, because several people share the tablet in the doghouse.
 */
@Component
class DeviceCookies {

    static final String PREFIX = "device-";

    /** What browsers keep a cookie for at most (RFC 6265bis). */
    private static final Duration LIFE = Duration.ofDays(400);

    private static final String ALGORITHM = "HmacSHA256";
    private static final int NONCE = 16;
    private static final Pattern FORM = Pattern.compile("([A-Za-z0-9_-]{22})\\.([A-Za-z0-9_-]{43})");
    private static final Base64.Encoder LETTERS = Base64.getUrlEncoder().withoutPadding();

    private final SecretKeySpec key;
    private final CookieNames names;
    private final SecureRandom random = new SecureRandom();

    DeviceCookies(Secrets secrets, CookieNames names, InstantSource clock) {
        this.names = names;
        this.key = new SecretKeySpec(secrets.get("devices", DeviceCookies::fresh, clock.instant()), ALGORITHM);
    }

    private static byte[] fresh() {
        var secret = new byte[32];
        new SecureRandom().nextBytes(secret);
        return secret;
    }

    /** What the browser is known by, if this cookie was given to it for this login. */
    Optional<String> nonce(String login, String value) {
        var parts = FORM.matcher(value);
        return parts.matches() && same(parts.group(2), mac(login, parts.group(1)))
                ? Optional.of(parts.group(1))
                : Optional.empty();
    }

    /** Gives the browser a new one, and returns what it is known by from now on. */
    String give(String login, HttpServletRequest request, HttpServletResponse response) {
        var bytes = new byte[NONCE];
        random.nextBytes(bytes);
        String nonce = LETTERS.encodeToString(bytes);
        String cookie = ResponseCookie.from(names.of(PREFIX + login), nonce + "." + mac(login, nonce))
                .path(request.getContextPath() + "/")
                .maxAge(LIFE)
                .httpOnly(true)
                .secure(request.isSecure())
                .sameSite("Strict")
                .build()
                .toString();
        response.addHeader(HttpHeaders.SET_COOKIE, cookie);
        return nonce;
    }

    private static boolean same(String one, String other) {
        return MessageDigest.isEqual(
                one.getBytes(StandardCharsets.US_ASCII), other.getBytes(StandardCharsets.US_ASCII));
    }

    private String mac(String login, String nonce) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(key);
            return LETTERS.encodeToString(mac.doFinal((login + "," + nonce).getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has " + ALGORITHM, e);
        }
    }
}
