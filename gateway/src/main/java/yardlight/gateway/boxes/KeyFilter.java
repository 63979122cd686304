package yardlight.gateway.boxes;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.web.authentication.preauth.PreAuthenticatedAuthenticationToken;
import org.springframework.web.filter.OncePerRequestFilter;
import yardlight.gateway.problem.Bearer;

/** Lets a box in that shows its key, and has it heard even if what it posts is refused. Not a bean, so that it stands in its own chain only. */
final class KeyFilter extends OncePerRequestFilter {

    static final String ROLE = "BOX";

    private final KeyRing keys;
    private final SignsOfLife signs;

    KeyFilter(KeyRing keys, SignsOfLife signs) {
        this.keys = keys;
        this.signs = signs;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<PostingBox> box = Bearer.token(request).flatMap(keys::box).map(PostingBox::new);
        box.ifPresent(known ->
                SecurityContextHolder.setContext(new SecurityContextImpl(new PreAuthenticatedAuthenticationToken(
                        known, "", List.of(new SimpleGrantedAuthority("ROLE_" + ROLE))))));
        chain.doFilter(request, response);
        box.ifPresent(known -> signs.answered(known.getName(), response.getStatus()));
    }
}
