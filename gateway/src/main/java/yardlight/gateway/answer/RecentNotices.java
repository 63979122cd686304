package yardlight.gateway.answer;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Told;
import yardlight.gateway.link.Tokens;

/**
 * The notices of the last days by the hashes of their tokens. What was made since the last look is added at each look, so
 * that a guess at a token costs one small query.
 */
@Component
class RecentNotices {

    /** The newest of them; far more than a small operator sends in the life of a link. */
    private static final int MOST = 50_000;

    private final Told told;
    private final Tokens tokens;
    private final Map<String, Told.Made> byHash = new LinkedHashMap<>();
    private Instant seen = Instant.EPOCH;

    RecentNotices(Told told, Tokens tokens) {
        this.told = told;
        this.tokens = tokens;
    }

    synchronized Optional<Told.Made> byHash(String hash, Instant now) {
        Instant oldest = now.minus(Tokens.LIFE);
        byHash.values().removeIf(made -> made.at().isBefore(oldest));
        for (Told.Made made : told.made(seen.isBefore(oldest) ? oldest : seen)) {
            byHash.put(tokens.hashFor(made.notice()), made);
            seen = made.at();
        }
        var hashes = byHash.keySet().iterator();
        for (int spare = byHash.size() - MOST; spare > 0; spare--) {
            hashes.next();
            hashes.remove();
        }
        return Optional.ofNullable(byHash.get(hash));
    }
}
