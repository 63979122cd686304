package yardlight.escalation.wording;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.setup.Site;

/**
 * What there is to know about an alarm beside its numbers.
 *
 * @param filling the feed that still drives what fills the tanks, while what empties them has no power
 * @param shared what silent boxes of several sites have in common
 */
public record Circumstance(Optional<String> filling, Optional<Shared> shared) {

    public static final Circumstance NONE = new Circumstance(Optional.empty(), Optional.empty());

    /**
     * Several sites from which nothing is heard.
     *
     * @param link whether it is a link; else it is a feed
     * @param name of the link or the feed
     * @param sites which, at least one
     * @param since when the first of them was last heard
     */
    public record Shared(boolean link, String name, List<Site> sites, Instant since) {
        public Shared {
            sites = List.copyOf(sites);
        }
    }
}
