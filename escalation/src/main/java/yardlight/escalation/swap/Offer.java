package yardlight.escalation.swap;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A turn, or a part of one, that somebody asks the others of the roster to take. All are asked at once; the first yes has it.
 *
 * @param id made of the roster, the moment and the code
 * @param code what the others answer with; no live callout and no other open offer has it
 * @param by contact whose turn it is
 * @param from start, inclusive, local to the roster's zone
 * @param to end, exclusive
 * @param asked contacts, in the order of the roster
 * @param declined those of them who said no
 * @param taker who took it
 * @param expiresAt from then on nobody can take it
 */
public record Offer(
        String id,
        int code,
        String roster,
        String by,
        LocalDateTime from,
        LocalDateTime to,
        List<String> asked,
        Set<String> declined,
        OfferState state,
        Optional<String> taker,
        Instant askedAt,
        Instant expiresAt) {

    public Offer {
        asked = List.copyOf(asked);
        declined = Collections.unmodifiableSet(new TreeSet<>(declined));
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("offer must end after it starts: " + from + " to " + to);
        }
        if (asked.isEmpty() || asked.contains(by)) {
            throw new IllegalArgumentException("offer must be asked of others: " + id);
        }
    }

    /** A new one, that nobody has answered. */
    public static Offer made(
            String id,
            int code,
            String roster,
            String by,
            Part part,
            List<String> asked,
            Instant askedAt,
            Instant expiresAt) {
        return new Offer(
                id,
                code,
                roster,
                by,
                part.from(),
                part.to(),
                asked,
                Set.of(),
                OfferState.OPEN,
                Optional.empty(),
                askedAt,
                expiresAt);
    }

    /** Whether somebody can still take it, as far as its own time goes. */
    public boolean open(Instant now) {
        return state.takeable() && now.isBefore(expiresAt);
    }

    /** When it ends by itself; empty when it has ended. */
    public Optional<Instant> dueAt() {
        return state.takeable() ? Optional.of(expiresAt) : Optional.empty();
    }

    /**
     * The offer after something happened; empty when nothing comes of it.
     *
     * @param who said yes or no; not looked at otherwise
     */
    public Optional<Offer> after(OfferTrigger trigger, String who, Instant now) {
        var refused = new TreeSet<>(declined);
        if (trigger == OfferTrigger.DECLINE) {
            refused.add(who);
        }
        var facts = new OfferTransitions.Facts(!now.isBefore(expiresAt), refused.containsAll(asked));
        return OfferTransitions.next(state, trigger, facts)
                .map(next -> new Offer(
                        id,
                        code,
                        roster,
                        by,
                        from,
                        to,
                        asked,
                        refused,
                        next,
                        trigger == OfferTrigger.TAKE ? Optional.of(who) : taker,
                        askedAt,
                        expiresAt));
    }

    /**
     * What is left of it for somebody who takes it now: from the next full minute on, when it has begun.
     *
     * @param now local to the roster's zone
     */
    public Part left(LocalDateTime now) {
        LocalDateTime minute = now.truncatedTo(ChronoUnit.MINUTES);
        LocalDateTime next = minute.equals(now) ? now : minute.plusMinutes(1);
        return new Part(from.isBefore(next) ? next : from, to);
    }

    /** Whether a part of it is a part of this. */
    public boolean overlaps(Part part) {
        return from.isBefore(part.to()) && part.from().isBefore(to);
    }
}
