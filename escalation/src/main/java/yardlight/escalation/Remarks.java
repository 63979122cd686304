package yardlight.escalation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.limit.Finding;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.limit.Watching;

/** What is found out about one point beside what its own limits say, while it is being found out. */
final class Remarks {

    private final List<Finding> findings = new ArrayList<>();
    private final Instant at;
    private Gauge gauge;

    /** @param at the time of the reading that is looked at */
    Remarks(Gauge gauge, Instant at) {
        this.gauge = gauge;
        this.at = at;
    }

    Gauge gauge() {
        return gauge;
    }

    Instant at() {
        return at;
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

    /** A condition without numbers. */
    void say(String condition, boolean holds) {
        say(condition, holds, new Numbers(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    void say(String condition, boolean holds, Numbers numbers) {
        boolean turned = holds != gauge.holds(condition);
        if (holds || turned) {
            findings.add(new Finding(
                    condition, holds, turned, numbers.value(), numbers.limit(), numbers.unit(), at, numbers.text()));
        }
        gauge = gauge.with(condition, holds);
    }

    Watching.Step done() {
        return new Watching.Step(gauge, findings);
    }

    /**
     * @param unit of both, empty for the point's own
     * @param text in words, for the log and the page
     */
    record Numbers(
            Optional<BigDecimal> value, Optional<BigDecimal> limit, Optional<String> unit, Optional<String> text) {

        /** Both rounded to so many decimals. */
        static Numbers of(double value, double limit, int decimals) {
            return new Numbers(
                    Optional.of(rounded(value, decimals)),
                    Optional.of(rounded(limit, decimals)),
                    Optional.empty(),
                    Optional.empty());
        }

        Numbers in(String name) {
            return new Numbers(value, limit, Optional.of(name), text);
        }

        Numbers saying(String words) {
            return new Numbers(value, limit, unit, Optional.of(words));
        }

        static BigDecimal rounded(double value, int decimals) {
            return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        }
    }
}
