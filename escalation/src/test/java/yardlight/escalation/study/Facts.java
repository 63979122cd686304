package yardlight.escalation.study;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;

/** The numbers of one world: those of {@link Fact}, some of them perhaps changed to see what depends on them. */
record Facts(Map<Fact, Double> changed) {

    static final Facts AS_CHOSEN = new Facts(Map.of());

    Facts with(Fact fact, double value) {
        var more = new EnumMap<Fact, Double>(Fact.class);
        more.putAll(changed);
        more.put(fact, value);
        return new Facts(more);
    }

    double of(Fact fact) {
        return changed.getOrDefault(fact, fact.value);
    }

    /** Whether something with this chance is so. */
    boolean chance(Fact share, SplittableRandom random) {
        return random.nextDouble() < of(share);
    }

    /** A length of time in ms, lognormal with this mean in minutes. */
    long length(Fact minutes, SplittableRandom random) {
        double spread = of(Fact.SPREAD);
        double drawn = of(minutes) * StrictMath.exp(spread * gaussian(random) - spread * spread / 2);
        return Math.round(drawn * 60_000);
    }

    /** From posting to arrival, in ms. */
    long latency(SplittableRandom random) {
        double drawn = of(Fact.LATENCY_SECONDS) * StrictMath.exp(of(Fact.LATENCY_SPREAD) * gaussian(random));
        return Math.round(drawn * 1000);
    }

    /** By Box and Muller, so that the same seed draws the same world whatever Java's own method is at the time. */
    private static double gaussian(SplittableRandom random) {
        return StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()))
                * StrictMath.cos(2 * Math.PI * random.nextDouble());
    }
}
