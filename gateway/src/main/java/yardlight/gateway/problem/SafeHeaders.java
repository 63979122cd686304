package yardlight.gateway.problem;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpHeaders;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter.CrossOriginResourcePolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/**
 * The headers that every answer carries. Nothing of a page comes from elsewhere, and no script that stands in a page
 * runs.
 */
public final class SafeHeaders {

    private static final String POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self';"
            + " base-uri 'none'; frame-ancestors 'none'";

    private static final String SCRIPTS =
            "; script-src 'self'; worker-src 'self'; manifest-src 'self'; connect-src 'self'";

    private SafeHeaders() {}

    /** For answers that run nothing. */
    public static void set(HeadersConfigurer<HttpSecurity> headers) {
        set(headers, POLICY);
    }

    /** For an answer that none of our chains has seen. */
    static void bare(HttpServletResponse response) {
        response.setHeader("Content-Security-Policy", POLICY);
        response.setHeader("X-Content-Type-Options", "nosniff");
        response.setHeader("X-Frame-Options", "DENY");
        response.setHeader("Referrer-Policy", "no-referrer");
        response.setHeader("Cross-Origin-Opener-Policy", "same-origin");
        response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
    }

    /** For pages that may run scripts, and a worker, from files of ours; still none that stands in the page. */
    public static void setWithScripts(HeadersConfigurer<HttpSecurity> headers) {
        set(headers, POLICY + SCRIPTS);
    }

    private static void set(HeadersConfigurer<HttpSecurity> headers, String policy) {
        headers.contentSecurityPolicy(csp -> csp.policyDirectives(policy))
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.NO_REFERRER))
                .crossOriginOpenerPolicy(opener -> opener.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
                .crossOriginResourcePolicy(resource -> resource.policy(CrossOriginResourcePolicy.SAME_ORIGIN));
    }
}
