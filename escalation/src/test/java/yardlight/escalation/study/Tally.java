package yardlight.escalation.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import yardlight.escalation.heartbeat.Verdict;

/** The figures of one set of rules over many outages. */
final class Tally {

    private static final double MONTH = 30.4375 * 24 * 3_600_000;

    private final List<Score> scores;
    private final String rules;

    Tally(List<Score> scores, Rules rules) {
        this.scores = scores;
        this.rules = rules.words();
    }

    /** The same for the outages of one cause. */
    private List<Mark> marks(Predicate<Score> which) {
        return scores.stream()
                .filter(which)
                .map(score -> score.marks().get(rules))
                .toList();
    }

    private List<Mark> noticed() {
        return marks(score -> true).stream().filter(Mark::noticed).toList();
    }

    long outages() {
        return scores.size();
    }

    long count(Predicate<Mark> which) {
        return marks(score -> true).stream().filter(which).count();
    }

    /** How often this was said first where that was so; the empty verdict is that nobody was told. */
    long first(Truth truth, Optional<Verdict> said) {
        return count(mark -> mark.truth() == truth && mark.first().equals(said));
    }

    /** How often the record ends with this where that was so. */
    long last(Truth truth, Verdict said) {
        return count(mark -> mark.noticed() && mark.lastTruth() == truth && mark.last() == said);
    }

    /** Of the outages of power or path that evidence decides, the share whose first text is right. */
    double firstWhereDecided() {
        return share(Mark::decided, Mark::firstRight);
    }

    double firstWhereDecided(Cause cause) {
        List<Mark> decided = marks(score -> score.cause() == cause).stream()
                .filter(Mark::decided)
                .toList();
        return (double) decided.stream().filter(Mark::firstRight).count() / decided.size();
    }

    /** Of all outages that anybody was told of, the share whose first text is wrong. */
    double wrong() {
        return share(Mark::noticed, Mark::firstWrong);
    }

    double wrong(Cause cause) {
        List<Mark> noticed = marks(score -> score.cause() == cause).stream()
                .filter(Mark::noticed)
                .toList();
        return (double) noticed.stream().filter(Mark::firstWrong).count() / noticed.size();
    }

    double lastRight() {
        return share(Mark::noticed, Mark::lastRight);
    }

    double lastRightOrReboot() {
        return share(Mark::noticed, Mark::lastRightOrReboot);
    }

    double lastRight(Cause cause) {
        List<Mark> noticed = marks(score -> score.cause() == cause).stream()
                .filter(Mark::noticed)
                .toList();
        return (double) noticed.stream().filter(Mark::lastRight).count() / noticed.size();
    }

    private double share(Predicate<Mark> of, Predicate<Mark> which) {
        return (double) count(of.and(which)) / count(of);
    }

    /** Texts to the first contact of an outage of one cause, on average. */
    double texts() {
        return marks(score -> score.cause().one()).stream()
                .filter(Mark::noticed)
                .mapToInt(Mark::texts)
                .average()
                .orElse(0);
    }

    double texts(Cause cause) {
        return marks(score -> score.cause() == cause).stream()
                .filter(Mark::noticed)
                .mapToInt(Mark::texts)
                .average()
                .orElse(0);
    }

    /** Share of the outages of one cause that made more than one text. */
    double moreThanOneText() {
        List<Mark> one = marks(score -> score.cause().one()).stream()
                .filter(Mark::noticed)
                .toList();
        return (double) one.stream().filter(mark -> mark.texts() > 1).count() / one.size();
    }

    /** From the beginning of an outage to the first text, in minutes, of this share of the outages at most. */
    double delay(double share) {
        long[] delays = noticed().stream().mapToLong(Mark::delay).sorted().toArray();
        return delays.length == 0 ? 0 : delays[(int) ((delays.length - 1) * share)] / 60_000.0;
    }

    double falseAlarmsPerBoxMonth() {
        long all = marks(score -> true).stream().mapToLong(Mark::falseAlarms).sum();
        return all / boxMonths();
    }

    double boxMonths() {
        return scores.stream().mapToLong(Score::quiet).sum() / MONTH;
    }

    long outages(Cause cause) {
        return scores.stream().filter(score -> score.cause() == cause).count();
    }

    long noticed(Cause cause) {
        return marks(score -> score.cause() == cause).stream()
                .filter(Mark::noticed)
                .count();
    }
}
