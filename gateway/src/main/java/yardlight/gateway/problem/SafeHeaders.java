package yardlight.gateway.problem;

import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/** The headers that every answer carries. Nothing of a page comes from elsewhere, and no page runs a script. */
public final class SafeHeaders {

    private static final String POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self';"
            + " base-uri 'none'; frame-ancestors 'none'";

    private SafeHeaders() {}

    public static void set(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(csp -> csp.policyDirectives(POLICY))
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.NO_REFERRER));
    }
}
