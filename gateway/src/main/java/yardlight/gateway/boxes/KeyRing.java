package yardlight.gateway.boxes;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.boxkey.BoxKey;
import yardlight.db.boxkey.BoxKeys;
import yardlight.escalation.setup.Box;
import yardlight.gateway.setup.SetupInForce;

/**
 * Knows boxes by their keys. A key has 256 random bits, so a plain SHA-256 of it is as good as a slow one. What was
 * looked up is remembered for a short while: a post costs no query, and a key that another gateway revoked is dead within
 * that while.
 */
@Component
class KeyRing {

    private static final Duration SHORT_WHILE = Duration.ofSeconds(20);
    private static final int LONGEST = 200;

    private final SetupInForce inForce;
    private final LoadingCache<String, Optional<String>> boxes;

    KeyRing(BoxKeys keys, SetupInForce inForce) {
        this.inForce = inForce;
        this.boxes = Caffeine.newBuilder()
                .maximumSize(10_000)
                .expireAfterWrite(SHORT_WHILE)
                .build(hash -> keys.byHash(hash)
                        .filter(key -> key.revokedAt().isEmpty())
                        .map(BoxKey::box));
    }

    /** The box that this key belongs to, as long as it is set up. */
    Optional<Box> box(String key) {
        if (key.isEmpty() || key.length() > LONGEST) {
            return Optional.empty();
        }
        return boxes.get(hash(key)).map(inForce.setup().boxes()::get);
    }

    void forgetAll() {
        boxes.invalidateAll();
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
