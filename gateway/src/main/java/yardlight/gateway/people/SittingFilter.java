package yardlight.gateway.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Takes the session away from whoever's time is over, before anybody has looked who it is. Not a bean, so that it stands in
 * its own chain only.
 */
final class SittingFilter extends OncePerRequestFilter {

    private static final String WHO = HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY;

    private final OpenSittings sittings;

    SittingFilter(OpenSittings sittings) {
        this.sittings = sittings;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        HttpSession session = request.getSession(false);
        if (session != null && session.getAttribute(WHO) != null && !sittings.goesOn(session)) {
            session.invalidate();
        }
        chain.doFilter(request, response);
    }
}
