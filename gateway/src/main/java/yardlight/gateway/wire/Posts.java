package yardlight.gateway.wire;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.problem.ProblemWriter;

/**
 * The newest posts of the boxes that somebody is looking at, taken or refused. Only in the memory of this gateway, and only
 * from the first look at a box until ten minutes after the last one: to all other boxes it costs one look into a map.
 */
@Component
public class Posts {

    /** For each box. */
    static final int KEPT = 20;

    /** Boxes that are looked at, at once. */
    static final int MOST = 50;

    private static final Duration LOOKED_AT = Duration.ofMinutes(10);
    private static final int FAULTS = 3;
    private static final String SAID = Posts.class.getName() + ".said";
    private static final String ANSWER = Posts.class.getName() + ".answer";

    private final InstantSource clock;
    private final Cache<String, Deque<Post>> rings =
            Caffeine.newBuilder().maximumSize(MOST).expireAfterWrite(LOOKED_AT).build();

    public Posts(InstantSource clock) {
        this.clock = clock;
    }

    /** What came since somebody began to look, newest first. From now on it is looked at. */
    public List<Post> look(String box) {
        Deque<Post> ring = rings.get(box, any -> new ArrayDeque<>());
        rings.put(box, ring);
        synchronized (ring) {
            return List.copyOf(ring);
        }
    }

    /** What the post of this request says and what it is answered; asked for only while somebody looks at the box. */
    public void tell(HttpServletRequest request, String box, Supplier<String> said, Supplier<String> answer) {
        if (rings.getIfPresent(box) != null) {
            request.setAttribute(SAID, said.get());
            request.setAttribute(ANSWER, answer.get());
        }
    }

    /** The request is answered. */
    public void answered(HttpServletRequest request, String box, int status) {
        Deque<Post> ring = rings.getIfPresent(box);
        if (ring == null) {
            return;
        }
        String path = request.getRequestURI();
        var post = new Post(
                clock.instant(),
                path.substring(path.lastIndexOf('/') + 1),
                status,
                attribute(request, SAID),
                ProblemWriter.written(request).map(Posts::reason).orElseGet(() -> attribute(request, ANSWER)));
        synchronized (ring) {
            ring.addFirst(post);
            if (ring.size() > KEPT) {
                ring.removeLast();
            }
        }
    }

    /** How many boxes are looked at now. */
    long watched() {
        rings.cleanUp();
        return rings.estimatedSize();
    }

    private static String attribute(HttpServletRequest request, String name) {
        return Optional.ofNullable(request.getAttribute(name))
                .map(Object::toString)
                .orElse("");
    }

    private static String reason(Problem problem) {
        if (problem.faults().isEmpty()) {
            return problem.getMessage();
        }
        int more = problem.faults().size() - FAULTS;
        return problem.faults().stream()
                        .limit(FAULTS)
                        .map(fault -> fault.place().replaceFirst("^#/?", "") + " " + fault.detail())
                        .map(String::strip)
                        .collect(Collectors.joining("; "))
                + (more > 0 ? "; +" + more : "");
    }
}
