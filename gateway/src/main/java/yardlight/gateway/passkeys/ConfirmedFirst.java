package yardlight.gateway.passkeys;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.filter.OncePerRequestFilter;
import yardlight.gateway.people.Confirmed;

/** Lets nobody add a passkey who has not given their password a moment ago. */
final class ConfirmedFirst extends OncePerRequestFilter {

    private static final String ADDING = "/webauthn/register";

    private final Confirmed confirmed;

    ConfirmedFirst(Confirmed confirmed) {
        this.confirmed = confirmed;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !request.getRequestURI().startsWith(request.getContextPath() + ADDING);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (confirmed.holds(request)) {
            chain.doFilter(request, response);
        } else {
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
        }
    }
}
