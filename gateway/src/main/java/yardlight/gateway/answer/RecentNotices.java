package yardlight.gateway.answer;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Told;
import yardlight.gateway.link.Tokens;

/**
 * The notices of the last days by the hashes of their tokens. What was made since the last look is added at each look, so
 * that a guess at a token costs one small query. What clocks that differ or were set back put before that look is found by
 * reading all of them again, once in a while.
 */
@Component
class RecentNotices {

    /** The newest of them; far more than a small operator sends in the life of a link. */
    private static final int MOST = 50_000;

    /** Between two readings of all of them for the sake of tokens that are not known. */
    private static final Duration PAUSE = Duration.ofMinutes(1);

    private final Told told;
    private final Tokens tokens;
    private final Map<String, Told.Made> byHash = new LinkedHashMap<>();
    private Instant seen = Instant.EPOCH;
    private Optional<Instant> reread = Optional.empty();

    RecentNotices(Told told, Tokens tokens) {
        this.told = told;
        this.tokens = tokens;
    }

    synchronized Optional<Told.Made> byHash(String hash, Instant now) {
        Instant oldest = now.minus(Tokens.LIFE);
        byHash.values().removeIf(made -> made.at().isBefore(oldest));
        read(seen.isBefore(oldest) ? oldest : seen);
        if (!byHash.containsKey(hash) && reread.filter(at -> near(at, now)).isEmpty()) {
            reread = Optional.of(now);
            read(oldest);
        }
        var hashes = byHash.keySet().iterator();
        for (int spare = byHash.size() - MOST; spare > 0; spare--) {
            hashes.next();
            hashes.remove();
        }
        return Optional.ofNullable(byHash.get(hash)).filter(made -> hash.equals(hash(made)));
    }

    /** Another one than that by which it is kept when all links were ended since. */
    private String hash(Told.Made made) {
        return tokens.hashFor(made.notice(), made.at());
    }

    private void read(Instant from) {
        for (Told.Made made : told.made(from)) {
            byHash.put(hash(made), made);
            seen = made.at();
        }
    }

    private static boolean near(Instant one, Instant other) {
        return Duration.between(one, other).abs().compareTo(PAUSE) < 0;
    }
}
