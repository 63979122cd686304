package yardlight.db.boxkey;

import java.time.Instant;
import java.util.Optional;

/**
 * A key of a box.
 *
 * @param id by which it is revoked; says nothing about the key
 * @param hash of the key, up to 64 characters
 * @param endsAt from when on it is not good any more; empty for one that goes on
 * @param usedAt when the box last used it, a few minutes behind
 */
public record BoxKey(
        String id,
        String box,
        String hash,
        Instant createdAt,
        Optional<Instant> endsAt,
        Optional<Instant> revokedAt,
        Optional<Instant> usedAt) {

    /** A new one, that goes on until it is revoked. */
    public static BoxKey made(String id, String box, String hash, Instant now) {
        return new BoxKey(id, box, hash, now, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Whether it opens a door at this instant. */
    public boolean goodAt(Instant now) {
        return revokedAt.isEmpty() && endsAt.filter(end -> !now.isBefore(end)).isEmpty();
    }
}
