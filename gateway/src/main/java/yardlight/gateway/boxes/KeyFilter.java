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
import yardlight.gateway.posting.PostingBox;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.problem.ProblemWriter;
import yardlight.gateway.signature.SignedRequest;
import yardlight.gateway.wire.Posts;

/**
 * Lets a box in that shows its key or signs with it, and has it heard even if what it posts is refused. Not a bean, so that
 * it stands in its own chain only.
 */
final class KeyFilter extends OncePerRequestFilter {

    static final String ROLE = "BOX";

    private final Knock knock;
    private final SignsOfLife signs;
    private final Posts posts;
    private final ProblemWriter writer;

    KeyFilter(Knock knock, SignsOfLife signs, Posts posts, ProblemWriter writer) {
        this.knock = knock;
        this.signs = signs;
        this.posts = posts;
        this.writer = writer;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<PostingBox> box;
        try {
            box = box(request);
        } catch (Problem refused) {
            writer.write(refused, request, response);
            return;
        }
        box.ifPresent(known ->
                SecurityContextHolder.setContext(new SecurityContextImpl(new PreAuthenticatedAuthenticationToken(
                        known, "", List.of(new SimpleGrantedAuthority("ROLE_" + ROLE))))));
        chain.doFilter(request, response);
        box.ifPresent(known -> answered(known.getName(), request, response.getStatus()));
    }

    private void answered(String box, HttpServletRequest request, int status) {
        posts.answered(request, box, status);
        signs.answered(box, status);
    }

    private Optional<PostingBox> box(HttpServletRequest request) throws IOException {
        Optional<PostingBox> box = knock.who(request)
                .map(held -> new PostingBox(held.box(), held.key().hash()));
        if (box.filter(known -> known.box().signed()).isPresent() && !SignedRequest.is(request)) {
            throw Knock.unsigned(box.get().getName());
        }
        return box;
    }
}
