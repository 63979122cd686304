package yardlight.gateway.boxes;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Component;
import yardlight.db.boxkey.BoxKeys;

/**
 * When each key was used last. Kept in memory, and stored at most once a minute for all together and once in ten minutes for each,
 * so that it costs the disk next to nothing: what other gateways show is that much behind.
 */
@Component
class LastUses implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(LastUses.class);
    private static final long APART = Duration.ofMinutes(1).toNanos();
    private static final Duration EACH = Duration.ofMinutes(10);

    private final BoxKeys keys;
    private final Map<String, Use> uses = new ConcurrentHashMap<>();
    private final AtomicLong stored = new AtomicLong(System.nanoTime());

    /** @param kept what of it is stored */
    private record Use(Instant last, Instant kept) {}

    LastUses(BoxKeys keys) {
        this.keys = keys;
    }

    void used(String key, Instant now) {
        uses.merge(key, new Use(now, Instant.EPOCH), (before, fresh) -> new Use(fresh.last(), before.kept()));
        long before = stored.get();
        long nanos = System.nanoTime();
        if (nanos - before > APART && stored.compareAndSet(before, nanos)) {
            CompletableFuture.runAsync(() -> store(EACH));
        }
    }

    /** As far as this gateway knows. */
    Optional<Instant> last(String key) {
        return Optional.ofNullable(uses.get(key)).map(Use::last);
    }

    /** @param behind how much what is stored may be behind */
    void store(Duration behind) {
        var late = new HashMap<String, Instant>();
        uses.forEach((key, use) -> {
            if (use.kept().plus(behind).isBefore(use.last())) {
                late.put(key, use.last());
            }
        });
        try {
            keys.used(late);
            late.forEach((key, at) -> uses.computeIfPresent(key, (same, use) -> new Use(use.last(), at)));
        } catch (RuntimeException away) {
            LOG.debug("when keys were last used is stored another time: {}", away.toString());
        }
    }

    @Override
    public void destroy() {
        store(Duration.ZERO);
    }
}
