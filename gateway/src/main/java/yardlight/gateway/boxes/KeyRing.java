package yardlight.gateway.boxes;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Expiry;
import com.github.benmanes.caffeine.cache.LoadingCache;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.springframework.stereotype.Component;
import yardlight.db.boxkey.BoxKey;
import yardlight.db.boxkey.BoxKeys;
import yardlight.escalation.setup.Box;
import yardlight.gateway.setup.SetupInForce;

/**
 * Knows boxes by their keys. A key has 256 random bits, so a plain SHA-256 of it is as good as a slow one.
 *
 * <p>What was looked up is remembered, so that a post costs no query. Which keys were revoked, here or by another gateway, is
 * asked once a second, and never before the box that posts then: a revoked key is dead a second later.
 */
@Component
class KeyRing {

    private static final long APART = Duration.ofSeconds(1).toNanos();

    /** How far the clock of the gateway that revoked a key may be behind ours. */
    private static final Duration MARGIN = Duration.ofHours(1);

    /** In case it is further behind. */
    private static final Duration LONGEST = Duration.ofMinutes(10);

    /** A key that nobody knew may be made meanwhile. */
    private static final Duration UNKNOWN = Duration.ofSeconds(20);

    private static final int LONGEST_KEY = 200;

    /** A share of the heap, by what one costs. */
    private static final long MOST = Runtime.getRuntime().maxMemory() / 32 / 300;

    private final BoxKeys keys;
    private final SetupInForce inForce;
    private final InstantSource clock;
    private final LoadingCache<String, Optional<String>> boxes;
    private final AtomicLong asked = new AtomicLong(System.nanoTime());

    KeyRing(BoxKeys keys, SetupInForce inForce, InstantSource clock) {
        this.keys = keys;
        this.inForce = inForce;
        this.clock = clock;
        this.boxes = Caffeine.newBuilder()
                .maximumSize(MOST)
                .expireAfter(
                        Expiry.<String, Optional<String>>writing((hash, box) -> box.isPresent() ? LONGEST : UNKNOWN))
                .build(hash -> keys.byHash(hash)
                        .filter(key -> key.revokedAt().isEmpty())
                        .map(BoxKey::box));
    }

    /** The box that this key belongs to, as long as it is set up. */
    Optional<Box> box(String key) {
        if (key.isEmpty() || key.length() > LONGEST_KEY) {
            return Optional.empty();
        }
        long before = asked.get();
        long now = System.nanoTime();
        if (now - before > APART && asked.compareAndSet(before, now)) {
            forgetRevoked();
        }
        return boxes.get(hash(key)).map(inForce.setup().boxes()::get);
    }

    /** Forgets the keys that were revoked, whoever did it. */
    void forgetRevoked() {
        boxes.invalidateAll(keys.revokedSince(clock.instant().minus(MARGIN)));
    }

    static String hash(String key) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
