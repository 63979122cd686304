package yardlight.escalation.heartbeat;

/**
 * What boxes that fall silent together have in common. Only boxes whose sites climb the same ladder are one alarm: others
 * have other people to be told.
 *
 * @param name of the link or feed; of a site its id
 * @param ladder of the sites; empty for one site
 */
public record Path(Kind kind, String name, String ladder) {

    /** What it is. */
    public enum Kind {
        SITE,
        FEED,
        LINK
    }

    public static Path site(String site) {
        return new Path(Kind.SITE, site, "");
    }

    public static Path link(String link, String ladder) {
        return new Path(Kind.LINK, link, ladder);
    }

    public static Path feed(String feed, String ladder) {
        return new Path(Kind.FEED, feed, ladder);
    }
}
