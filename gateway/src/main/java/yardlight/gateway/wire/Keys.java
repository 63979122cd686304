package yardlight.gateway.wire;

import java.security.Principal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The keys of boxes, as their owner handles them. */
public interface Keys {

    /**
     * A key as it is shown this once.
     *
     * @param othersEndAt when the box's other keys end at the latest, if that was asked for
     */
    record Fresh(String id, String key, Optional<Instant> othersEndAt) {}

    /**
     * A key without itself.
     *
     * @param usedAt when the box last posted with it, as far as this gateway knows
     * @param good whether it opens the door now
     */
    record Known(
            String id,
            Instant createdAt,
            Optional<Instant> endsAt,
            Optional<Instant> revokedAt,
            Optional<Instant> usedAt,
            boolean good) {}

    /** The keys of a box, oldest first, those that are over too. */
    List<Known> of(String box);

    /**
     * Makes one more key; on disk when it returns.
     *
     * @param othersEndAfter how long the others stay good, zero for not at all; empty to leave them alone
     * @throws yardlight.gateway.problem.Problem 404 when no such box is set up
     */
    Fresh make(String box, Optional<Duration> othersEndAfter, Principal by);

    /** Revokes a key of this box; false when it has no such key that is still good. */
    boolean revoke(String box, String id, Principal by);
}
