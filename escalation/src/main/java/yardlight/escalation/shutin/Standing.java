package yardlight.escalation.shutin;

import java.time.Instant;
import java.util.Optional;

/**
 * How a site stands with shutting in.
 *
 * @param consent by which terms it is turned on; empty: it is off
 * @param request the newest one, over or not: there is at most one open request for a site
 * @param wish what somebody has yet to say for the second time
 */
public record Standing(String site, Optional<Consent> consent, Optional<Request> request, Optional<Wish> wish) {

    /** Off, and never asked. */
    public static Standing none(String site) {
        return new Standing(site, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Whether the site may be asked by these terms: they must be, to the letter, those that were consented to. */
    public boolean on(Terms terms) {
        return consent.filter(known -> known.terms().equals(terms.words())).isPresent();
    }

    /** The request that something is still to come of. */
    public Optional<Request> open() {
        return request.filter(Request::open);
    }

    public Optional<Instant> dueAt() {
        return request.flatMap(Request::dueAt);
    }

    public Standing with(Request next) {
        return new Standing(site, consent, Optional.of(next), wish);
    }

    public Standing with(Optional<Consent> next) {
        return new Standing(site, next, request, Optional.empty());
    }

    public Standing wishing(Optional<Wish> next) {
        return new Standing(site, consent, request, next);
    }
}
