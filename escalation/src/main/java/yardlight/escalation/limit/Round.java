package yardlight.escalation.limit;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.reading.Reading;

/** One reading on its way past the rules, which each look at it and say what they find. */
final class Round {

    private final List<Finding> findings = new ArrayList<>();
    private final Optional<Reading> before;
    private final double value;
    private final Instant at;
    private Gauge gauge;

    /**
     * @param before the measurement before this one
     * @param gauge with the reading in it
     */
    Round(Gauge gauge, Optional<Reading> before, double value, Instant at) {
        this.gauge = gauge;
        this.before = before;
        this.value = value;
        this.at = at;
    }

    Optional<Reading> before() {
        return before;
    }

    double value() {
        return value;
    }

    Instant at() {
        return at;
    }

    /** The time of the reading in seconds since 1970. */
    double seconds() {
        return at.getEpochSecond() + at.getNano() / 1e9;
    }

    boolean holds(String condition) {
        return gauge.holds(condition);
    }

    List<Double> noted(String rule) {
        return gauge.noted(rule);
    }

    void note(String rule, List<Double> numbers) {
        gauge = gauge.noting(rule, numbers);
    }

    /** A condition that has to do with a limit. */
    void say(String condition, boolean holds, double found, BigDecimal limit) {
        say(condition, holds, Optional.of(Figures.beside(found, limit)), Optional.of(limit), Optional.empty());
    }

    /** A condition without one. */
    void say(String condition, boolean holds, double found) {
        say(condition, holds, Optional.of(Figures.alone(found)), Optional.empty(), Optional.empty());
    }

    /** A condition without any number. */
    void say(String condition, boolean holds) {
        say(condition, holds, Optional.empty(), Optional.empty(), Optional.empty());
    }

    void say(
            String condition,
            boolean holds,
            Optional<BigDecimal> found,
            Optional<BigDecimal> limit,
            Optional<String> unit) {
        boolean turned = holds != gauge.holds(condition);
        if (holds || turned) {
            findings.add(new Finding(condition, holds, turned, found, limit, unit, at));
        }
        gauge = gauge.with(condition, holds);
    }

    Watching.Step done() {
        return new Watching.Step(gauge, findings);
    }
}
