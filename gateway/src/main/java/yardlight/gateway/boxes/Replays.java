package yardlight.gateway.boxes;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.atomic.AtomicLong;
import org.springframework.stereotype.Component;
import yardlight.db.boxkey.SignedPosts;

/** Remembers signed posts as long as they could come again, in the database: a replay may go to another gateway, or after a restart. */
@Component
class Replays {

    private static final long APART = Duration.ofMinutes(1).toNanos();

    private final SignedPosts posts;
    private final InstantSource clock;
    private final AtomicLong forgotten = new AtomicLong(System.nanoTime());

    Replays(SignedPosts posts, InstantSource clock) {
        this.posts = posts;
        this.clock = clock;
    }

    /** @param until from when on it is too old anyway */
    boolean isFirst(String key, String nonce, Instant until) {
        long before = forgotten.get();
        long now = System.nanoTime();
        if (now - before > APART && forgotten.compareAndSet(before, now)) {
            // A second longer: the window is counted in whole ones.
            posts.forget(clock.instant().minusSeconds(1));
        }
        return posts.isFirst(key, nonce, until);
    }
}
