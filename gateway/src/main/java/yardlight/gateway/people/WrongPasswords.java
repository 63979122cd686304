package yardlight.gateway.people;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import io.github.bucket4j.Bucket;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import yardlight.escalation.alarm.AlarmKey;

/**
 * Slows down who guesses. Strangers have, for a login from one address, ten wrong passwords and then one more every half
 * minute; from one address for all logins together sixty, then one more every two seconds; and for one login from all
 * addresses together a hundred (NIST SP 800-63B-4, 3.2.2), then a hundred an hour. That alone would let them keep the owner
 * out, so a browser in which this login has signed in before is counted for itself, and an address from which it has is not
 * counted among the strangers'. What cannot be a login is refused before anything is counted or checked.
 */
final class WrongPasswords implements AuthenticationProvider {

    private static final Logger LOG = LoggerFactory.getLogger(WrongPasswords.class);
    private static final int FREE = 10;
    private static final int FREE_TOGETHER = 60;
    private static final int FREE_ACCOUNT = 100;
    private static final Duration REFILL = Duration.ofSeconds(30);

    private final AuthenticationProvider provider;
    private final KnownDevices known;

    private final LoadingCache<String, Bucket> browsers = buckets(FREE, REFILL);
    private final LoadingCache<String, Bucket> guesses = buckets(FREE, REFILL);
    private final LoadingCache<String, Bucket> together = buckets(FREE_TOGETHER, Duration.ofSeconds(2));
    private final LoadingCache<String, Bucket> accounts = buckets(FREE_ACCOUNT, Duration.ofSeconds(36));

    WrongPasswords(AuthenticationProvider provider, KnownDevices known) {
        this.provider = provider;
        this.known = known;
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
        Authentication who = attempt(claim, counted(claim));
        details(claim).filter(DeviceDetails::isProgram).ifPresent(details -> known.program(who.getName(), details));
        return who;
    }

    /** What a wrong password is counted in. A known browser that has spent its own is a stranger. */
    private List<Bucket> counted(Authentication claim) {
        String login = claim.getName();
        Optional<Bucket> own = details(claim)
                .flatMap(details -> known.browser(login, details))
                .map(browser -> browsers.get(login + "\n" + browser))
                .filter(bucket -> bucket.getAvailableTokens() >= 1);
        if (own.isPresent()) {
            return List.of(own.get());
        }
        var counted = new ArrayList<Bucket>();
        counted.add(together.get(address(claim)));
        counted.add(guesses.get(login + "\n" + address(claim)));
        counted.forEach(WrongPasswords::refuseIfSpent);
        if (!known.cameFrom(login, address(claim))) {
            Bucket account = accounts.get(login);
            refuseIfSpent(account);
            counted.add(account);
        }
        return counted;
    }

    private Authentication attempt(Authentication claim, List<Bucket> counted) {
        try {
            return provider.authenticate(claim);
        } catch (BadCredentialsException wrong) {
            counted.forEach(bucket -> bucket.tryConsume(1));
            boolean spent = counted.stream().anyMatch(bucket -> bucket.getAvailableTokens() < 1);
            String more = spent ? "; further ones have to wait" : "";
            LOG.warn("a wrong password for {} from {}{}", claim.getName(), address(claim), more);
            throw wrong;
        }
    }

    private static Optional<DeviceDetails> details(Authentication claim) {
        return claim.getDetails() instanceof DeviceDetails details ? Optional.of(details) : Optional.empty();
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
