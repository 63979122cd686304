package yardlight.gateway.people;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.HexFormat;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.crypto.password.PasswordEncoder;

/**
 * An expensive encoder made bearable: one check at a time, because each takes its 19 MiB of a small machine, and a
 * password that was right is remembered for a minute, as a MAC under a key that only this process has, because a script
 * that signs in with every request would otherwise pay each time. Few may wait for a check, and not for long: who guesses
 * must not take the threads that boxes are answered by. What was remembered goes by the stored hash, so that a changed
 * password forgets it.
 */
final class RememberingEncoder implements PasswordEncoder {

    private static final String MAC = "HmacSHA256";
    private static final int PLACES = 4;
    private static final int PATIENCE_SECONDS = 2;

    private final PasswordEncoder encoder;
    private final Semaphore turn = new Semaphore(1, true);
    private final Semaphore places = new Semaphore(PLACES);
    private final SecretKeySpec key;
    private final Cache<String, Boolean> right = Caffeine.newBuilder()
            .maximumSize(200)
            .expireAfterWrite(Duration.ofMinutes(1))
            .build();

    RememberingEncoder(PasswordEncoder encoder) {
        this.encoder = encoder;
        var bytes = new byte[32];
        new SecureRandom().nextBytes(bytes);
        this.key = new SecretKeySpec(bytes, MAC);
    }

    @Override
    public String encode(CharSequence raw) {
        turn.acquireUninterruptibly();
        try {
            return encoder.encode(PasswordRules.normal(raw));
        } finally {
            turn.release();
        }
    }

    /**
     * @throws LockedException when too many others wait
     */
    @Override
    public boolean matches(CharSequence raw, String encoded) {
        if (PasswordRules.tooLong(raw)) {
            return false;
        }
        String normal = PasswordRules.normal(raw);
        String tag = tag(encoded + "\0" + normal);
        if (right.getIfPresent(tag) != null) {
            return true;
        }
        boolean matches = check(normal, encoded);
        if (matches) {
            right.put(tag, true);
        }
        return matches;
    }

    private boolean check(CharSequence raw, String encoded) {
        if (!places.tryAcquire()) {
            throw busy();
        }
        try {
            return inTurn(raw, encoded);
        } finally {
            places.release();
        }
    }

    private boolean inTurn(CharSequence raw, String encoded) {
        try {
            if (!turn.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw busy();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw busy();
        }
        try {
            return encoder.matches(raw, encoded);
        } finally {
            turn.release();
        }
    }

    private static LockedException busy() {
        return new LockedException("too many passwords are being checked");
    }

    private String tag(String text) {
        try {
            Mac mac = Mac.getInstance(MAC);
            mac.init(key);
            return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has " + MAC, e);
        }
    }
}
