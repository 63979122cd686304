package yardlight.gateway.setup;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.limit.Change;
import yardlight.escalation.limit.Current;
import yardlight.escalation.limit.Drift;
import yardlight.escalation.limit.Limits;
import yardlight.escalation.limit.Rules;
import yardlight.gateway.document.Fields;

/** Reads what a point's readings are held against. What is wrong is noted, and left out. */
final class RulesReader {

    private static final List<String> LEVELS = List.of("lowLow", "low", "high", "highHigh");
    private static final Duration SHORTEST = Duration.ofSeconds(10);
    private static final Duration LONGEST = Duration.ofDays(31);

    private RulesReader() {}

    static Rules rules(Fields point) {
        return new Rules(
                point.object("limits").flatMap(RulesReader::limits),
                point.object("change").flatMap(RulesReader::change),
                point.object("drift").flatMap(RulesReader::drift),
                point.duration("stuck", Duration.ofMinutes(1), LONGEST),
                point.duration("missing", SHORTEST, LONGEST),
                point.object("current").flatMap(RulesReader::current));
    }

    private static Optional<Limits> limits(Fields fields) {
        List<Optional<BigDecimal>> levels = LEVELS.stream().map(fields::number).toList();
        Optional<BigDecimal> deadband = least(fields, "deadband");
        fields.nothingElse();
        if (levels.stream().allMatch(Optional::isEmpty)) {
            return none(fields, LEVELS);
        }
        boolean rising = true;
        int below = -1;
        for (int i = 0; i < levels.size(); i++) {
            if (levels.get(i).isEmpty()) {
                continue;
            }
            if (below >= 0 && levels.get(below).get().compareTo(levels.get(i).get()) >= 0) {
                String under =
                        LEVELS.get(below) + " (" + levels.get(below).get().toPlainString() + ")";
                fields.fault(
                        LEVELS.get(i),
                        "must be above " + under + ": " + levels.get(i).get().toPlainString());
                rising = false;
            }
            below = i;
        }
        return rising
                ? Optional.of(new Limits(
                        levels.get(3), levels.get(2), levels.get(1), levels.get(0), deadband.orElse(BigDecimal.ZERO)))
                : Optional.empty();
    }

    private static Optional<Change> change(Fields fields) {
        Optional<BigDecimal> rise = above(fields, "rise");
        Optional<BigDecimal> fall = above(fields, "fall");
        Optional<Duration> within = fields.needs("within").duration("within", SHORTEST, Duration.ofDays(1));
        fields.nothingElse();
        if (!fields.has("rise") && !fields.has("fall")) {
            return none(fields, List.of("rise", "fall"));
        }
        return within.map(span -> new Change(rise, fall, span));
    }

    private static Optional<Drift> drift(Fields fields) {
        Optional<BigDecimal> target =
                fields.needs("target", "slack", "decision").number("target");
        Optional<BigDecimal> slack = least(fields, "slack");
        Optional<BigDecimal> decision = above(fields, "decision");
        fields.nothingElse();
        return target.isPresent() && slack.isPresent() && decision.isPresent()
                ? Optional.of(new Drift(target.get(), slack.get(), decision.get()))
                : Optional.empty();
    }

    private static Optional<Current> current(Fields fields) {
        Optional<BigDecimal> low = fields.needs("low", "high").number("low");
        Optional<BigDecimal> high = fields.number("high");
        fields.nothingElse();
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        if (low.get().compareTo(high.get()) == 0) {
            fields.fault("high", "must not be the same as low: " + high.get().toPlainString());
            return Optional.empty();
        }
        return Optional.of(new Current(low.get(), high.get()));
    }

    private static Optional<BigDecimal> least(Fields fields, String name) {
        return fields.number(name).filter(number -> good(fields, name, number, number.signum() >= 0, "0 or more"));
    }

    private static Optional<BigDecimal> above(Fields fields, String name) {
        return fields.number(name).filter(number -> good(fields, name, number, number.signum() > 0, "above 0"));
    }

    private static boolean good(Fields fields, String name, BigDecimal number, boolean good, String rule) {
        if (!good) {
            fields.fault(name, "must be " + rule + ": " + number.toPlainString());
        }
        return good;
    }

    private static <T> Optional<T> none(Fields fields, List<String> names) {
        if (names.stream().noneMatch(fields::has)) {
            fields.fault(
                    names.get(names.size() - 1), "or one of the others must be there: " + String.join(", ", names));
        }
        return Optional.empty();
    }
}
