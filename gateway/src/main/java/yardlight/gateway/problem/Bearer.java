package yardlight.gateway.problem;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.springframework.http.HttpHeaders;

/** Keys in the header {@code Authorization: Bearer …} (RFC 6750). */
public final class Bearer {

    /** What a caller without a good key is told. */
    public static final String CHALLENGE = "Bearer realm=\"Yardlight\"";

    private static final String SCHEME = "bearer ";

    private Bearer() {}

    public static Optional<String> token(HttpServletRequest request) {
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        return header != null && header.regionMatches(true, 0, SCHEME, 0, SCHEME.length())
                ? Optional.of(header.substring(SCHEME.length()).strip())
                : Optional.empty();
    }
}
