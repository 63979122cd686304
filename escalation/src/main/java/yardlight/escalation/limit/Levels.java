package yardlight.escalation.limit;

import java.math.BigDecimal;

/** Fixed limits with their deadband, the worst first. */
final class Levels {

    private Levels() {}

    static void look(Round round, Limits limits) {
        BigDecimal band = limits.deadband();
        limits.highHigh().ifPresent(limit -> above(round, Conditions.HIGH_HIGH, limit, band));
        limits.high().ifPresent(limit -> above(round, Conditions.HIGH, limit, band));
        limits.lowLow().ifPresent(limit -> below(round, Conditions.LOW_LOW, limit, band));
        limits.low().ifPresent(limit -> below(round, Conditions.LOW, limit, band));
    }

    private static void above(Round round, String condition, BigDecimal limit, BigDecimal band) {
        boolean holds = round.holds(condition)
                ? round.value() >= limit.subtract(band).doubleValue()
                : round.value() > limit.doubleValue();
        round.say(condition, holds, round.value(), limit);
    }

    private static void below(Round round, String condition, BigDecimal limit, BigDecimal band) {
        boolean holds = round.holds(condition)
                ? round.value() <= limit.add(band).doubleValue()
                : round.value() < limit.doubleValue();
        round.say(condition, holds, round.value(), limit);
    }
}
