package yardlight.gateway.problem;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/**
 * The headers that every answer carries. Nothing of a page comes from elsewhere, and no page runs a script but the one that
 * asks for it here.
 */
public final class SafeHeaders {

    private static final String POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self';"
            + " base-uri 'none'; frame-ancestors 'none'";

    private static final String HEADER = "Content-Security-Policy";
    private static final String SCRIPTS = "; script-src 'self'; worker-src 'self'; manifest-src 'self'";

    private SafeHeaders() {}

    public static void set(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(csp -> csp.policyDirectives(POLICY))
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.NO_REFERRER));
    }

    /** This one answer may run scripts, and a worker, from files of ours; still none that stands in the page. */
    public static void allowScripts(HttpServletResponse response) {
        response.setHeader(HEADER, POLICY + SCRIPTS);
    }
}
