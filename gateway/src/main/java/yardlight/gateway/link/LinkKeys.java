package yardlight.gateway.link;

import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Component;
import yardlight.db.secret.Secret;
import yardlight.db.secret.Secrets;

/**
 * The keys that links are made with, one after the other. A link is always made with the key that was in use when its notice was made, so
 * the links in texts that are out keep working when another key takes over.
 */
@Component
class LinkKeys {

    /** By then every gateway of the database has read of a new key. */
    static final Duration KNOWN = Duration.ofMinutes(1);

    private static final Logger LOG = LoggerFactory.getLogger(LinkKeys.class);
    private static final String NAME = "links";
    private static final Duration FRESH = Duration.ofSeconds(30);
    private static final int BYTES = 32;

    private final Secrets secrets;
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();
    private volatile Read read;

    private record Read(List<Secret> keys, Instant at) {}

    LinkKeys(Secrets secrets, InstantSource clock) {
        this.secrets = secrets;
        this.clock = clock;
        Instant now = clock.instant();
        if (secrets.generations(NAME).isEmpty()) {
            secrets.get(NAME, this::fresh, now);
        }
        read = new Read(secrets.generations(NAME), now);
    }

    private byte[] fresh() {
        var secret = new byte[BYTES];
        random.nextBytes(secret);
        return secret;
    }

    /** The key for what was made at this time; for what is older than all keys the oldest one. */
    byte[] at(Instant time) {
        List<Secret> keys = keys();
        return keys.stream()
                .filter(key -> !key.from().isAfter(time))
                .reduce((before, after) -> after)
                .orElse(keys.get(0))
                .content();
    }

    private List<Secret> keys() {
        Read last = read;
        Instant now = clock.instant();
        if (Duration.between(last.at(), now).abs().compareTo(FRESH) >= 0) {
            read = new Read(readAgain(last), now);
        }
        return read.keys();
    }

    /** Links go out also while the database is away. */
    private List<Secret> readAgain(Read last) {
        try {
            return secrets.generations(NAME);
        } catch (DataAccessException e) {
            LOG.warn("the keys of links cannot be read, those that are known go on: {}", e.toString());
            return last.keys();
        }
    }

    /**
     * Another key, in use a minute from now: until then every gateway has heard of it. Those that no link can be made with
     * any more are forgotten.
     */
    Instant another() {
        Instant from = clock.instant().plus(KNOWN);
        secrets.forgetFollowedBefore(NAME, clock.instant().minus(Tokens.LIFE));
        secrets.add(NAME, fresh(), from);
        readNow();
        return from;
    }

    /** Another key in place of all others: no link that is out works any more. */
    Instant instead() {
        Instant from = clock.instant();
        secrets.replace(NAME, fresh(), from);
        readNow();
        return from;
    }

    private void readNow() {
        read = new Read(secrets.generations(NAME), clock.instant());
    }
}
