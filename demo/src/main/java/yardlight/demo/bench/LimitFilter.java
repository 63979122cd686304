package yardlight.demo.bench;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.web.authentication.preauth.PreAuthenticatedAuthenticationToken;
import org.springframework.web.filter.OncePerRequestFilter;

/** Finds the box by the hash of its key, in memory. */
final class LimitFilter extends OncePerRequestFilter {

    static final String ROLE = "BOX";

    private final Map<String, String> boxes;

    LimitFilter(Map<String, String> boxes) {
        this.boxes = boxes;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String key = request.getHeader("Authorization");
        String box = key == null ? null : boxes.get(BenchHome.hash(key.substring("Bearer ".length())));
        if (box != null) {
            var token = new PreAuthenticatedAuthenticationToken(
                    box, "", List.of(new SimpleGrantedAuthority("ROLE_" + ROLE)));
            SecurityContextHolder.setContext(new SecurityContextImpl(token));
        }
        chain.doFilter(request, response);
    }
}
