package yardlight.gateway.boxes;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import io.github.bucket4j.Bucket;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import yardlight.gateway.lane.Lane;

/**
 * Hears a box also in a post that was refused: it is alive, whatever it got wrong. At most once a second for each box, so
 * that a flood of refused posts costs no more than the allowance lets through.
 */
@Component
class SignsOfLife {

    private static final Logger LOG = LoggerFactory.getLogger(SignsOfLife.class);
    private static final Duration APART = Duration.ofSeconds(1);

    /** Here it is the key or the address that was wrong. */
    private static final Set<Integer> NOT_A_POST = Set.of(401, 403, 404, 405);

    private final Lane lane;
    private final LoadingCache<String, Bucket> turns = Caffeine.newBuilder()
            .maximumSize(10_000)
            .build(box -> Bucket.builder()
                    .addLimit(limit -> limit.capacity(1).refillGreedy(1, APART))
                    .build());

    SignsOfLife(Lane lane) {
        this.lane = lane;
    }

    /** Never throws: the refusal stands, also when this cannot be stored. */
    void answered(String box, int status) {
        boolean refused = status >= 400 && status < 500 && !NOT_A_POST.contains(status);
        if (!refused || !turns.get(box).tryConsume(1)) {
            return;
        }
        try {
            // No heartbeat: when these come says nothing of when those will.
            lane.events(box, List.of(), false);
        } catch (RuntimeException trouble) {
            LOG.warn("box {} was heard in a refused post, but that was not stored: {}", box, trouble.toString());
        }
    }
}
