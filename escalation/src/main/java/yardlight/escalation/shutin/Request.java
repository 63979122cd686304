package yardlight.escalation.shutin;

import java.time.Instant;
import java.util.Optional;

/**
 * One request to a site to shut in.
 *
 * @param id the same however often it is handed out: who has done it once does it no more
 * @param through the box or the relay that it goes to
 * @param expiresAt from then on it must not be done any more
 * @param confirmBy from then on it counts as not confirmed
 * @param takenAt when it first went to the site
 * @param triedAt when it was last sent to the relay
 * @param endedAt when it came to the state that it has, once that is an end
 */
public record Request(
        String id,
        RequestState state,
        Terms.Way way,
        String through,
        Asker asker,
        Instant askedAt,
        Instant expiresAt,
        Instant confirmBy,
        Optional<Instant> takenAt,
        Optional<Instant> triedAt,
        Optional<Instant> endedAt) {

    /** A new one by these terms. */
    public static Request made(String id, Terms terms, Asker asker, Instant now) {
        return new Request(
                id,
                RequestState.ASKED,
                terms.way(),
                terms.through(),
                asker,
                now,
                now.plus(terms.expires()),
                now.plus(terms.confirmWithin()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** The request once this has happened to it; empty when nothing comes of it. */
    public Optional<Request> after(RequestTrigger trigger, Instant now) {
        var facts = new RequestTransitions.Facts(!now.isBefore(expiresAt), !now.isBefore(confirmBy));
        return RequestTransitions.next(state, trigger, facts).map(next -> at(next, trigger, now));
    }

    private Request at(RequestState next, RequestTrigger trigger, Instant now) {
        boolean taken = next == RequestState.FETCHED && takenAt.isEmpty();
        return new Request(
                id,
                next,
                way,
                through,
                asker,
                askedAt,
                expiresAt,
                confirmBy,
                taken ? Optional.of(now) : takenAt,
                trigger == RequestTrigger.TRY ? Optional.of(now) : triedAt,
                next.open() ? Optional.empty() : Optional.of(now));
    }

    public boolean open() {
        return state.open();
    }

    /** When something comes of it by itself; empty once it is over. */
    public Optional<Instant> dueAt() {
        if (!open()) {
            return Optional.empty();
        }
        return Optional.of(state == RequestState.ASKED ? expiresAt : confirmBy);
    }
}
