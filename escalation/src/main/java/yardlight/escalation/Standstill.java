package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.runtime.RunTime;
import yardlight.escalation.runtime.Segment;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Site;
import yardlight.escalation.tank.TankRules;
import yardlight.escalation.trend.Sample;
import yardlight.escalation.trend.Series;
import yardlight.escalation.trend.Trend;
import yardlight.escalation.wording.Circumstance.Stands;

/**
 * Whether a pump that runs less than usual does not run at all, and what the rest of the site says of why. The shares of a tank are
 * common practice, no source.
 */
final class Standstill {

    /** A level by so much of the tank above that at which the pump came on is one at which it should run. */
    private static final double ABOVE = 0.02;
    /** A level that rises by less than this share of the tank an hour is not called rising. */
    private static final double IDLE = 0.01;
    /** Fuller than this a tank cannot rise for long, or runs over. */
    private static final double FULL = 0.95;

    private final Draft draft;

    Standstill(Draft draft) {
        this.draft = draft;
    }

    /** Empty as long as it comes on now and then. */
    Optional<Stands> of(Point pump) {
        RunTime runs = Curves.runs(gauge(pump));
        if (runs.running().orElse(true)) {
            return Optional.empty();
        }
        if (powerOff(pump.site())) {
            return Optional.of(Stands.WITHOUT_POWER);
        }
        Optional<Point> tank = pump.equipment()
                .pump()
                .flatMap(rules -> rules.empties())
                .map(id -> draft.setup().point(pump.site(), id))
                .filter(point -> point.equipment().tank().isPresent());
        Optional<Trend> level = tank.flatMap(point -> trend(point, runs));
        boolean rests = rests(runs.segments());
        return level.isPresent()
                ? byLevel(tank.get(), level.get(), runs, rests)
                : Optional.of(Stands.FOR_LONG).filter(any -> rests);
    }

    private boolean powerOff(String site) {
        var feeds = new FeedsNow(draft);
        return draft.setup().site(site).map(Site::empties).stream()
                .flatMap(empties -> empties.stream())
                .anyMatch(feed -> feeds.off(site, feed));
    }

    /** Whether it rests for longer than it ever did on its last day. */
    private static boolean rests(List<Segment> segments) {
        Duration now = length(segments.get(segments.size() - 1));
        return segments.subList(0, segments.size() - 1).stream()
                .filter(one -> !one.on())
                .map(Standstill::length)
                .allMatch(other -> now.compareTo(other) > 0);
    }

    private static Duration length(Segment segment) {
        return Duration.between(segment.from(), segment.to());
    }

    private Optional<Trend> trend(Point tank, RunTime runs) {
        return Tanks.trend(gauge(tank), tank.equipment().tank().orElseThrow(), Optional.of(runs));
    }

    private Gauge gauge(Point point) {
        return draft.gauge(new Gauge.Key(point.site(), point.id()));
    }

    private Optional<Stands> byLevel(Point tank, Trend trend, RunTime runs, boolean rests) {
        TankRules rules = tank.equipment().tank().orElseThrow();
        Series volumes = Curves.of(gauge(tank), rules::volume);
        double capacity = rules.tank().capacity();
        double stands = trend.value();
        OptionalDouble starts = atStarts(volumes, runs.segments());
        boolean up = starts.isPresent()
                ? stands > starts.getAsDouble() + ABOVE * capacity
                : trend.slowest() > 0 || stands > FULL * capacity;
        boolean dry = !up && rests && trend.fastest() < IDLE * capacity;
        return up ? Optional.of(Stands.AT_A_LEVEL) : dry ? Optional.of(Stands.DRY) : Optional.empty();
    }

    /** The highest level at which it came on in its last day, as far as both were read; empty when it never did. */
    private static OptionalDouble atStarts(Series volumes, List<Segment> segments) {
        return segments.stream()
                .skip(1)
                .filter(Segment::on)
                .map(Segment::from)
                .flatMap(at -> before(volumes, at).stream())
                .mapToDouble(Sample::value)
                .max();
    }

    private static Optional<Sample> before(Series volumes, Instant at) {
        return volumes.samples().stream().filter(one -> !one.at().isAfter(at)).reduce((earlier, later) -> later);
    }
}
