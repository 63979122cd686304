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
import yardlight.escalation.alarm.AlarmKey;

/**
 * Slows down who guesses: ten wrong passwords for a login from one address, then one more every half minute. Counted by
 * address too, so that a stranger cannot lock the owner out. For all logins together an address has sixty, then one more
 * every two seconds. What cannot be a login is refused before anything is counted or checked.
 */
final class WrongPasswords implements AuthenticationProvider {

    private static final int FREE = 10;

    private final AuthenticationProvider provider;
    private static final int FREE_TOGETHER = 60;

    private final LoadingCache<String, Bucket> guesses = buckets(FREE, Duration.ofSeconds(30));
    private final LoadingCache<String, Bucket> together = buckets(FREE_TOGETHER, Duration.ofSeconds(2));

    WrongPasswords(AuthenticationProvider provider) {
        this.provider = provider;
    }

    private static LoadingCache<String, Bucket> buckets(int free, Duration refill) {
        return Caffeine.newBuilder()
                .maximumSize(10_000)
                .expireAfterAccess(Duration.ofHours(1))
                .build(who -> Bucket.builder()
                        .withNanosecondPrecision()
                        .addLimit(limit -> limit.capacity(free).refillGreedy(1, refill))
                        .build());
    }

    @Override
    public Authentication authenticate(Authentication claim) {
        if (!AlarmKey.ID.matcher(claim.getName()).matches()) {
            throw new BadCredentialsException("no such login");
        }
        Bucket all = together.get(address(claim));
        refuseIfSpent(all);
        Bucket left = guesses.get(claim.getName() + "\n" + address(claim));
        refuseIfSpent(left);
        try {
            return provider.authenticate(claim);
        } catch (BadCredentialsException wrong) {
            left.tryConsume(1);
            all.tryConsume(1);
            throw wrong;
        }
    }

    private static void refuseIfSpent(Bucket bucket) {
        if (bucket.getAvailableTokens() < 1) {
            throw new LockedException("too many wrong passwords");
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
