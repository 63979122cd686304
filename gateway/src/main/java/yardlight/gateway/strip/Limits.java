package yardlight.gateway.strip;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.limit.Conditions;
import yardlight.escalation.setup.Point;
import yardlight.gateway.page.Telling;

/** The fixed limits of a point, for a drawing. */
public final class Limits {

    private Limits() {}

    /** From the lowest to the highest. */
    public static List<Limit> of(Point point, Telling telling) {
        return point.rules().limits().stream()
                .flatMap(limits -> Stream.of(
                                limit(limits.lowLow(), Conditions.LOW_LOW, false, telling),
                                limit(limits.low(), Conditions.LOW, false, telling),
                                limit(limits.high(), Conditions.HIGH, true, telling),
                                limit(limits.highHigh(), Conditions.HIGH_HIGH, true, telling))
                        .flatMap(Optional::stream))
                .toList();
    }

    private static Optional<Limit> limit(Optional<BigDecimal> value, String condition, boolean above, Telling telling) {
        return value.map(number -> new Limit(telling.condition(condition), number.doubleValue(), above));
    }
}
