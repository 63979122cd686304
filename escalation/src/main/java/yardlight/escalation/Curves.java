package yardlight.escalation;

import java.time.Instant;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.runtime.Numbers;
import yardlight.escalation.runtime.RunTime;
import yardlight.escalation.trend.Sample;
import yardlight.escalation.trend.Series;

/** What gauges remember, as curves and run times. */
final class Curves {

    /** By what a pump remembers when it ran. */
    static final String RUNS = "runs";

    private Curves() {}

    /** The last day of a point, each value made into something else. */
    static Series of(Gauge gauge, DoubleUnaryOperator meaning) {
        return new Series(gauge.recent().samples().stream()
                .map(one -> new Sample(one.at(), meaning.applyAsDouble(one.value())))
                .toList());
    }

    static RunTime runs(Gauge gauge) {
        return Numbers.read(gauge.noted(RUNS));
    }

    /** Since when a pump has been what it is, with a while for the level to follow; empty when nobody knows. */
    static Optional<Instant> settled(Optional<RunTime> pump, java.time.Duration after) {
        return pump.flatMap(RunTime::since).map(since -> since.plus(after));
    }
}
