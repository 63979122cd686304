package yardlight.escalation.trend;

import java.time.Duration;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * When a rising value reaches a height, if it goes on as it does; with the interval in which that falls in 9 cases of 10.
 *
 * @param expected at the present rate; empty when it does not rise, or takes longer than {@link #FARTHEST}
 * @param earliest the lower end, never empty: no later than {@link #FARTHEST}
 * @param latest the upper end; empty when it may never get there
 */
public record Reach(Optional<Duration> expected, Duration earliest, Optional<Duration> latest) {

    /** What lies farther off than this is not told apart. */
    public static final Duration FARTHEST = Duration.ofDays(30);

    /** Rates change: by so much of itself for what is not seen in the past, as one standard deviation. */
    private static final double CHANGES = 0.1;

    private static final int HALVINGS = 40;

    /** When this trend reaches the height; at once, if it stands there or above. */
    public static Reach to(double height, Trend trend) {
        double room = height - trend.value();
        if (room <= 0) {
            return new Reach(Optional.of(Duration.ZERO), Duration.ZERO, Optional.of(Duration.ZERO));
        }
        Optional<Duration> expected = first(hours -> trend.rate() * hours - room);
        Optional<Duration> earliest = first(hours -> trend.rate() * hours + Trend.Z * off(trend, hours) - room);
        Optional<Duration> latest = first(hours -> trend.rate() * hours - Trend.Z * off(trend, hours) - room);
        return new Reach(expected, earliest.orElse(FARTHEST), latest);
    }

    /** The same so much later, with nothing newer known. */
    public Reach after(Duration later) {
        return new Reach(
                expected.map(left -> less(left, later)), less(earliest, later), latest.map(left -> less(left, later)));
    }

    /** What is left of a while after another one, never below nothing. */
    public static Duration less(Duration left, Duration gone) {
        Duration rest = left.minus(gone);
        return rest.isNegative() ? Duration.ZERO : rest;
    }

    /** How far the line may be off after so many hours, as one standard deviation. */
    private static double off(Trend trend, double hours) {
        double rate = trend.spread() * trend.spread() + Math.pow(CHANGES * trend.rate(), 2);
        return Math.sqrt(trend.noise() * trend.noise() / 2 + trend.walk() * hours + rate * hours * hours);
    }

    /** The first time at which this is no longer below 0, by halving; empty when it still is at the farthest. */
    private static Optional<Duration> first(DoubleUnaryOperator over) {
        double low = 0;
        double high = FARTHEST.toHours();
        if (over.applyAsDouble(high) < 0) {
            return Optional.empty();
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (over.applyAsDouble(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(Duration.ofSeconds(Math.round(high * 3600)));
    }
}
