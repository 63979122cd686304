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
import java.util.function.Function;
import java.util.regex.Pattern;
import org.springframework.stereotype.Component;
import yardlight.db.boxkey.BoxKey;
import yardlight.db.boxkey.BoxKeys;
import yardlight.escalation.setup.Box;
import yardlight.gateway.setup.SetupInForce;

/**
 * Knows boxes by their keys. A key has 256 random bits, so a plain SHA-256 of it is as good as a slow one.
 *
 * <p>What was looked up is remembered, so that a post costs no query. Which keys were revoked or given an end, here or by another
 * gateway, is asked once a second, and never before the box that posts then: a revoked key is dead a second later.
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
    private static final Pattern ID = Pattern.compile("[a-z0-9-]{1,64}");

    /**
     * A share of the heap, by what one costs: the keys of as many boxes as that heap is good for, and some. Boxes post in turn, so
     * that each post of a box whose key finds no place costs a query.
     */
    private static final long MOST = Runtime.getRuntime().maxMemory() / 20 / 400;

    private final BoxKeys keys;
    private final SetupInForce inForce;
    private final LastUses uses;
    private final InstantSource clock;
    private final LoadingCache<String, Optional<BoxKey>> byHash;
    private final LoadingCache<String, Optional<BoxKey>> byId;
    private final AtomicLong asked = new AtomicLong(System.nanoTime());

    /** A key that is good now, and its box, which is set up. */
    record Held(BoxKey key, Box box) {}

    KeyRing(BoxKeys keys, SetupInForce inForce, LastUses uses, InstantSource clock) {
        this.keys = keys;
        this.inForce = inForce;
        this.uses = uses;
        this.clock = clock;
        this.byHash = remembering(keys::byHash);
        this.byId = remembering(keys::byId);
    }

    private static LoadingCache<String, Optional<BoxKey>> remembering(Function<String, Optional<BoxKey>> find) {
        return Caffeine.newBuilder()
                .maximumSize(MOST)
                .expireAfter(
                        Expiry.<String, Optional<BoxKey>>writing((name, key) -> key.isPresent() ? LONGEST : UNKNOWN))
                .build(find::apply);
    }

    /** What this key opens. */
    Optional<Held> shown(String key) {
        return key.isEmpty() || key.length() > LONGEST_KEY ? Optional.empty() : held(byHash, hash(key));
    }

    /** What the key with this id opens, for the one who proves to have it. */
    Optional<Held> named(String id) {
        return ID.matcher(id).matches() ? held(byId, id) : Optional.empty();
    }

    private Optional<Held> held(LoadingCache<String, Optional<BoxKey>> known, String name) {
        long before = asked.get();
        long now = System.nanoTime();
        if (now - before > APART && asked.compareAndSet(before, now)) {
            forgetEnded();
        }
        return known.get(name).filter(key -> key.goodAt(clock.instant())).flatMap(this::withBox);
    }

    private Optional<Held> withBox(BoxKey key) {
        return Optional.ofNullable(inForce.setup().boxes().get(key.box())).map(box -> new Held(key, box));
    }

    /** A post came with it. */
    void used(String id) {
        uses.used(id, clock.instant());
    }

    /** Forgets the keys that were revoked or got an end, whoever did it. */
    void forgetEnded() {
        for (BoxKey key : keys.endedSince(clock.instant().minus(MARGIN))) {
            byHash.invalidate(key.hash());
            byId.invalidate(key.id());
        }
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
