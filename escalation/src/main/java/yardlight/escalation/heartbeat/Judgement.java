package yardlight.escalation.heartbeat;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What a silence means by what is known: Bayes' rule over three causes, power, link and the box itself, each clue counted
 * once and taken as independent of the others. A verdict is definite from a probability of {@link #SURE} on; below that it
 * is undecided, and so is a silence that is best explained by the box itself.
 */
public record Judgement(Map<Clue, Evidence> evidence) {

    /** From here on a verdict says more than that the box is silent. */
    public static final double SURE = 0.90;

    /**
     * Before anything is known power and link are alike, and one silence in thirty is the box's own doing. Common practice,
     * no source.
     */
    private static final double POWER = 0.485;

    private static final double LINK = 0.485;
    private static final double BOX = 0.03;

    public static final Judgement NOTHING_KNOWN = new Judgement(Map.of());

    public Judgement {
        var sorted = new EnumMap<Clue, Evidence>(Clue.class);
        sorted.putAll(evidence);
        evidence = Collections.unmodifiableMap(sorted);
    }

    /** By this evidence; of a clue that is there twice the later one counts. */
    public static Judgement by(Collection<Evidence> found) {
        return NOTHING_KNOWN.with(found);
    }

    /** With more evidence. */
    public Judgement with(Collection<Evidence> more) {
        var all = new EnumMap<Clue, Evidence>(Clue.class);
        all.putAll(evidence);
        more.forEach(one -> all.put(one.clue(), one));
        return new Judgement(all);
    }

    public Verdict verdict() {
        if (power() >= SURE) {
            return Verdict.POWER_OFF;
        }
        return link() >= SURE ? Verdict.COMMS_LOSS : Verdict.SILENT;
    }

    /** The probability of what the verdict says, 0 to 1; of an undecided one that of the likeliest cause. */
    public double confidence() {
        return Math.max(power(), Math.max(link(), 1 - power() - link()));
    }

    /** The probability that the power is off. */
    public double power() {
        return weight(Clue::power, POWER) / total();
    }

    /** The probability that the link is down. */
    public double link() {
        return weight(Clue::link, LINK) / total();
    }

    /** The reasons in words, in the order of the clues. */
    public List<String> reasons() {
        return evidence.values().stream().map(Evidence::words).toList();
    }

    private double total() {
        return weight(Clue::power, POWER) + weight(Clue::link, LINK) + weight(Clue::box, BOX);
    }

    private double weight(ToDoubleFunction<Clue> likelihood, double before) {
        return evidence.keySet().stream().mapToDouble(likelihood).reduce(before, (a, b) -> a * b);
    }
}
