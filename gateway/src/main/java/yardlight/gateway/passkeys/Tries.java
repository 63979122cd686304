package yardlight.gateway.passkeys;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Base64;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRequestOptions;
import org.springframework.security.web.webauthn.authentication.PublicKeyCredentialRequestOptionsRepository;
import org.springframework.web.util.WebUtils;
import yardlight.gateway.problem.CookieNames;

/**
 * What strangers were asked to sign. Kept for five minutes and for one answer, a thousand at most, and not in a session: a
 * stranger who only begins to sign in must not fill the memory.
 */
final class Tries implements PublicKeyCredentialRequestOptionsRepository {

    private static final Duration LIFE = Duration.ofMinutes(5);
    private static final int BYTES = 16;

    private final String name;
    private final SecureRandom random = new SecureRandom();
    private final Cache<String, PublicKeyCredentialRequestOptions> open =
            Caffeine.newBuilder().maximumSize(1_000).expireAfterWrite(LIFE).build();

    Tries(CookieNames names) {
        this.name = names.of("passkey-try");
    }

    @Override
    public void save(
            HttpServletRequest request, HttpServletResponse response, PublicKeyCredentialRequestOptions options) {
        cookie(request).ifPresent(open::invalidate);
        if (options != null) {
            var bytes = new byte[BYTES];
            random.nextBytes(bytes);
            String id = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
            open.put(id, options);
            String cookie = ResponseCookie.from(name, id)
                    .path(request.getContextPath() + "/")
                    .maxAge(LIFE)
                    .httpOnly(true)
                    .secure(request.isSecure())
                    .sameSite("Strict")
                    .build()
                    .toString();
            response.addHeader(HttpHeaders.SET_COOKIE, cookie);
        }
    }

    /** Each is asked for once: whoever answers wrongly is asked for something else. */
    @Override
    public PublicKeyCredentialRequestOptions load(HttpServletRequest request) {
        return cookie(request).map(id -> open.asMap().remove(id)).orElse(null);
    }

    private Optional<String> cookie(HttpServletRequest request) {
        return Optional.ofNullable(WebUtils.getCookie(request, name)).map(cookie -> cookie.getValue());
    }
}
