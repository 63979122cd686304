package yardlight.escalation.rehearsal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.limit.Limits;
import yardlight.escalation.limit.Rules;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Point;

/** How often a point would have called as it is set up, and how often with other delays or another deadband. */
public final class Suggestions {

    /** "A few seconds to about a minute" is usual, and one that is long; EEMUA 191 and ISA-18.2 as commonly quoted. */
    private static final List<Duration> DELAYS =
            List.of(Duration.ofSeconds(20), Duration.ofMinutes(1), Duration.ofMinutes(5));

    /** A usual first deadband of a level, as a part of what the point moves through; from the same sources. */
    private static final BigDecimal BAND = new BigDecimal("0.05");

    /**
     * One way to set the point up.
     *
     * @param asIs whether it is set up like that
     * @param deadband of its limits; empty when it has none
     * @param calls what would have come of it
     */
    public record Suggestion(
            boolean asIs, Duration onDelay, Optional<BigDecimal> deadband, List<Replay.Called> calls) {}

    private Suggestions() {}

    /**
     * Tries them.
     *
     * @param readings of the point, in any order; a month of them is enough to tell, and a minute apart is near enough
     * @return the point as it is, then the others in the order of their delays and deadbands
     */
    public static List<Suggestion> of(Point point, List<Reading> readings) {
        Optional<BigDecimal> now = point.rules().limits().map(Limits::deadband);
        Set<Duration> delays = new LinkedHashSet<>(List.of(point.timing().onDelay()));
        DELAYS.stream()
                .filter(delay -> delay.compareTo(point.timing().onDelay()) > 0)
                .forEach(delays::add);
        var found = new ArrayList<Suggestion>();
        for (Optional<BigDecimal> band : bands(now, readings)) {
            for (Duration delay : delays) {
                boolean asIs = delay.equals(point.timing().onDelay()) && band.equals(now);
                found.add(new Suggestion(asIs, delay, band, Replay.of(changed(point, delay, band), readings)));
            }
        }
        return List.copyOf(found);
    }

    /** The one that is, and a usual one if that is wider. */
    private static List<Optional<BigDecimal>> bands(Optional<BigDecimal> now, List<Reading> readings) {
        DoubleSummaryStatistics values =
                readings.stream().mapToDouble(Reading::value).summaryStatistics();
        boolean moves = values.getCount() > 0 && values.getMax() > values.getMin();
        if (now.isEmpty() || !moves) {
            return List.of(now);
        }
        BigDecimal usual = BigDecimal.valueOf(values.getMax() - values.getMin())
                .multiply(BAND)
                .round(new MathContext(2))
                .stripTrailingZeros();
        return Stream.of(now, Optional.of(usual))
                .filter(band -> band.equals(now) || band.get().compareTo(now.get()) > 0)
                .toList();
    }

    private static Point changed(Point point, Duration delay, Optional<BigDecimal> band) {
        Timing timing = point.timing();
        Rules rules = point.rules();
        Optional<Limits> limits = rules.limits()
                .map(old ->
                        new Limits(old.highHigh(), old.high(), old.low(), old.lowLow(), band.orElse(old.deadband())));
        return point.with(new Timing(delay, timing.offDelay(), timing.latching(), timing.realarm(), timing.nuisance()))
                .with(rules.with(limits));
    }
}
