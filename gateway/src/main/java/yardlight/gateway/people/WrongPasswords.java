package yardlight.gateway.people;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import io.github.bucket4j.Bucket;
import java.time.Duration;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.WebAuthenticationDetails;

/**
 * Slows down who guesses: ten wrong passwords for a login from one address, then one more every half minute. Counted by
 * address too, so that a stranger cannot lock the owner out.
 */
final class WrongPasswords implements AuthenticationProvider {

    private static final int FREE = 10;

    private final AuthenticationProvider provider;
    private final LoadingCache<String, Bucket> guesses = Caffeine.newBuilder()
            .maximumSize(10_000)
            .expireAfterAccess(Duration.ofHours(1))
            .build(who -> Bucket.builder()
                    .addLimit(limit -> limit.capacity(FREE).refillGreedy(1, Duration.ofSeconds(30)))
                    .build());

    WrongPasswords(AuthenticationProvider provider) {
        this.provider = provider;
    }

    @Override
    public Authentication authenticate(Authentication claim) {
        Bucket left = guesses.get(claim.getName() + "\n" + address(claim));
        if (left.getAvailableTokens() < 1) {
            throw new LockedException("too many wrong passwords");
        }
        try {
            return provider.authenticate(claim);
        } catch (BadCredentialsException wrong) {
            left.tryConsume(1);
            throw wrong;
        }
    }

    private static String address(Authentication claim) {
        return claim.getDetails() instanceof WebAuthenticationDetails details ? details.getRemoteAddress() : "";
    }

    @Override
    public boolean supports(Class<?> type) {
        return provider.supports(type);
    }
}
