package yardlight.escalation.heartbeat;

import java.time.Instant;

/**
 * One clue as it was found.
 *
 * @param at when what it says was so
 * @param about what it is about: a feed, a box, a number
 */
public record Evidence(Clue clue, Instant at, String about) {

    /** The reason in words. */
    public String words() {
        return clue.words(about);
    }

    /**
     * How much it speaks for the power rather than the link: the logarithm to base 10 of how many times likelier it is when
     * the power is off; negative when it speaks for the link.
     */
    public double weight() {
        return Math.log10(clue.power() / clue.link());
    }
}
