package yardlight.escalation.limit;

import java.time.Duration;
import java.util.Optional;

/**
 * What the readings of a point are held against. Each part is optional, and a point without any is only recorded.
 *
 * @param stuck after how long without any change the value is not believed any more, above 0
 * @param missing after how long without a reading something is wrong, above 0
 * @param current the loop by which the point is measured, if it is one
 */
public record Rules(
        Optional<Limits> limits,
        Optional<Change> change,
        Optional<Drift> drift,
        Optional<Duration> stuck,
        Optional<Duration> missing,
        Optional<Current> current) {

    public static final Rules NONE = new Rules(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public Rules {
        stuck.ifPresent(span -> Positive.require("stuck", span));
        missing.ifPresent(span -> Positive.require("missing", span));
    }

    /** Limits alone. */
    public static Rules of(Limits limits) {
        return NONE.with(Optional.of(limits));
    }

    /** The same with other limits. */
    public Rules with(Optional<Limits> others) {
        return new Rules(others, change, drift, stuck, missing, current);
    }
}
