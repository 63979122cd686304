package yardlight.escalation.heartbeat;

import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.escalation.sentence.Sentence;

/**
 * One clue as it was found.
 *
 * @param at when what it says was so
 * @param about what it is about: a feed, a box, a number
 */
public record Evidence(Clue clue, Instant at, String about) {

    /** What it is about when it is about several. */
    private static final Pattern BOXES = Pattern.compile("(\\d+) box(?:es)?");

    /** The reason in words. */
    public String words() {
        return clue.words(about);
    }

    /** The same for people, in whichever language they read. */
    public Sentence sentence() {
        Matcher boxes = BOXES.matcher(about);
        return boxes.matches()
                ? Sentence.of(clue.code() + (boxes.group(1).equals("1") ? ".one" : ".many"), words(), boxes.group(1))
                : Sentence.of(clue.code(), words(), about);
    }

    /** What a reason says that was kept in words, as the text of an alarm is; empty when it is none. */
    public static Optional<Sentence> read(String words) {
        return Arrays.stream(Clue.values())
                .flatMap(clue ->
                        clue.about(words).stream().map(about -> new Evidence(clue, Instant.EPOCH, about).sentence()))
                .findFirst();
    }

    /**
     * How much it speaks for the power rather than the link: the logarithm to base 10 of how many times likelier it is when
     * the power is off; negative when it speaks for the link.
     */
    public double weight() {
        return Math.log10(clue.power() / clue.link());
    }
}
