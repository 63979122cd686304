package yardlight.escalation.performance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a longer on-delay of one alarm would have spared people. Every alarm of it is late by the delay then: whether that may
 * be is for people to say.
 *
 * @param effect of the delay that is proposed
 */
public record Advice(Performance.Frequent frequent, OnDelays.Effect effect) {

    /** As much of the load as the ten most frequent may be together. */
    private static final double MUCH = 0.05;

    /** Fewer tell nothing of the next ones. Common practice, no source. */
    private static final int FEW = 5;

    /** For those of the most frequent that are much of the load and came often enough to tell; the most frequent first. */
    public static List<Advice> of(Performance performance) {
        return performance.frequent().stream()
                .filter(one -> one.share() >= MUCH && one.count() >= FEW)
                .flatMap(one -> best(one.delays()).map(effect -> new Advice(one, effect)).stream())
                .toList();
    }

    /** The shortest that removes half of them; where none does, the one that removes most. */
    private static Optional<OnDelays.Effect> best(List<OnDelays.Effect> delays) {
        Optional<OnDelays.Effect> half = delays.stream()
                .filter(effect -> effect.removed() * 2 >= effect.before())
                .findFirst();
        return Stream.concat(
                        half.stream(),
                        delays.stream()
                                .max(Comparator.comparing(OnDelays.Effect::removed)
                                        .thenComparing(OnDelays.Effect::onDelay, Comparator.reverseOrder()))
                                .stream())
                .findFirst();
    }
}
