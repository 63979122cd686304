package yardlight.escalation.wording;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.setup.Site;
import yardlight.escalation.tank.Outlook;

/**
 * What there is to know about an alarm beside its numbers.
 *
 * @param filling the feed that still drives what fills the tanks, while what empties them has no power
 * @param shared what silent boxes of several sites have in common
 * @param found that it was found out from readings, and still is so by them
 * @param was the condition that it was before it became worse
 */
public record Circumstance(
        Optional<String> filling, Optional<Shared> shared, Optional<Found> found, Optional<String> was) {

    public static final Circumstance NONE = new Circumstance(Optional.empty(), Optional.empty(), Optional.empty());

    /** Of what has not become worse. */
    public Circumstance(Optional<String> filling, Optional<Shared> shared, Optional<Found> found) {
        this(filling, shared, found, Optional.empty());
    }

    /**
     * @param outlook when the tank that it is about runs over
     * @param stands that the pump that it is about does not run at all
     */
    public record Found(Optional<Outlook> outlook, Optional<Stands> stands) {

        /** Of what is no pump, or one that runs now and then. */
        public Found(Optional<Outlook> outlook) {
            this(outlook, Optional.empty());
        }
    }

    /** What is known of a pump that does not run at all. */
    public enum Stands {
        /** Its feed is off, as a box says. */
        WITHOUT_POWER,
        /** The level is higher than it has to be for the pump to run. */
        AT_A_LEVEL,
        /** The level does not rise. */
        DRY,
        /** For longer than it ever does, and nobody knows the level. */
        FOR_LONG
    }

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
