package yardlight.escalation.heartbeat;

import java.util.Locale;
import java.util.Optional;

/**
 * Something that tells the causes of a silence apart, with how likely it is to be seen if the power is off, if the link is
 * down, and if it is the box itself. The three numbers are common practice, no source; what comes of them is held against a
 * hundred thousand made outages in docs/silence-study.md.
 */
public enum Clue {
    /** The last word of the box was that its own feed is off. */
    FEED_OFF(0.90, 0.04, 0.04, "its feed %s was off when it last spoke"),
    /** Its feed was on when it last spoke, and it has a battery: it would have said that the mains fail. */
    FEED_ON(0.03, 1, 1, "its feed %s was on when it last spoke, and it has a battery to say so if that changes"),
    /** It has a battery, but never says how its feed is. */
    BATTERY(0.10, 1, 1, "it has a battery and does not die with the mains"),
    BATTERY_FALLING(0.90, 0.15, 0.15, "its battery had fallen to %s V"),
    SIGNAL_FALLEN(0.10, 0.40, 0.10, "its signal had fallen to %s dBm"),

    /** A box that lives says that the same feed is off. */
    FEED_OFF_ELSEWHERE(0.90, 0.04, 0.04, "box %s says that the feed is off"),
    /** A box at the same site lives on the same feed. */
    FEED_LIVES(0.03, 1, 1, "box %s lives on the same feed at the same site"),
    /** A box elsewhere lives on a feed of the same name, which need not be the same feed. */
    FEED_LIVES_ELSEWHERE(0.40, 1, 1, "box %s lives on a feed of the same name"),
    /** Others on the feed went quiet at the same time, and they do not share the link, or the link lives. */
    FEED_QUIET(0.90, 0.03, 0.03, "%s on the same feed went quiet too"),

    LINK_LIVES(1, 0.08, 1, "box %s speaks over the same link"),
    /** Others on the link went quiet at the same time, on other feeds or with a battery. */
    LINK_QUIET(0.03, 0.95, 0.03, "%s on the same link, not dying with the same mains, went quiet too"),
    /** Others went quiet at the same time that share both the feed and the link. */
    BOTH_QUIET(0.90, 0.95, 0.03, "%s on the same feed and link went quiet too"),

    /** Back, started anew within the silence. */
    RESTARTED(0.95, 0.03, 0.90, "box %s started anew within the silence: its power was off, or it restarted itself"),
    /** The same of a box with a battery, which outlives most outages. */
    RESTARTED_ON_BATTERY(0.60, 0.03, 0.90, "box %s, which has a battery, started anew within the silence"),
    /** Back, and its uptime ran through. */
    RAN_ON(0.002, 0.97, 0.02, "box %s ran on through the silence");

    private static final String GAP = "%s";

    private final double power;
    private final double link;
    private final double box;
    private final String words;

    Clue(double power, double link, double box, String words) {
        this.power = power;
        this.link = link;
        this.box = box;
        this.words = words;
    }

    /** Whether it came to light only when a box was back. */
    public boolean late() {
        return this == RESTARTED || this == RESTARTED_ON_BATTERY || this == RAN_ON;
    }

    /** How likely it is to be seen when the power is off, 0 to 1. */
    double power() {
        return power;
    }

    double link() {
        return link;
    }

    double box() {
        return box;
    }

    /** By which other languages have its words. */
    String code() {
        return "clue." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    String words(String about) {
        return words.replace(GAP, about).replace("  ", " ");
    }

    /** What these words of it are about; empty when they are not its own. */
    Optional<String> about(String said) {
        int at = words.indexOf(GAP);
        if (at < 0) {
            return Optional.of("").filter(any -> said.equals(words));
        }
        String before = words.substring(0, at);
        String after = words.substring(at + GAP.length());
        return Optional.of(said)
                .filter(all -> all.length() > before.length() + after.length())
                .filter(all -> all.startsWith(before) && all.endsWith(after))
                .map(all -> all.substring(before.length(), all.length() - after.length()));
    }
}
