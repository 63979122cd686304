package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.limit.Watching;
import yardlight.escalation.runtime.RunTime;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Site;
import yardlight.escalation.tank.Inflow;
import yardlight.escalation.tank.Outlook;
import yardlight.escalation.tank.Response;
import yardlight.escalation.tank.Tank;
import yardlight.escalation.tank.TankRules;
import yardlight.escalation.trend.Series;
import yardlight.escalation.trend.Trend;
import yardlight.escalation.trend.Turning;

/** When tanks run over, by what their gauges remember, and what their pumps have to do with it. */
public final class Tanks {

    static final String OVERFLOW = "overflow";
    static final String FALLING = "falling-without-pump";

    private static final String INFLOW = "inflow";

    /** A level that came back from a peak or trough by a hundredth of what the tank holds has turned. */
    private static final double TURN = 0.01;
    /** A level that falls by less than a hundredth of the tank an hour is not called falling. */
    private static final double IDLE = 0.01;
    /** A level takes so long to show what a pump does. */
    static final Duration SETTLE = Duration.ofMinutes(2);
    /** A rate that held for less says nothing of how fast the tank fills. */
    private static final Duration A_RATE = Duration.ofMinutes(30);
    /** Nor does a fall that went on for less. */
    private static final Duration A_FALL = Duration.ofMinutes(20);
    /** After so long without a reading nobody knows what a tank does. */
    private static final Duration STALE = Duration.ofHours(2);

    private static final int DECIMALS = 2;

    private final Situation situation;

    Tanks(Situation situation) {
        this.situation = situation;
    }

    /**
     * The tank of a site that may run over first, and when, by all that was read so far; empty when no tank of the site is set
     * up, or nothing was read of one for two hours.
     */
    public static Optional<Outlook> soonest(Situation situation, String site, Instant now) {
        var tanks = new Tanks(situation);
        return situation.setup().points().stream()
                .filter(point -> point.site().equals(site))
                .flatMap(point -> tanks.outlook(point, now).stream())
                .min(Comparator.comparing(Outlook::least));
    }

    /** The same of one point. */
    Optional<Outlook> outlook(Point point, Instant now) {
        Gauge gauge = situation.gauge(new Gauge.Key(point.site(), point.id()));
        return point.equipment()
                .tank()
                .filter(rules ->
                        gauge.readAt().filter(at -> at.plus(STALE).isAfter(now)).isPresent())
                .flatMap(rules -> gauge.newest().map(newest -> {
                    Inflow inflow = Inflow.of(gauge.noted(INFLOW));
                    Optional<Trend> trend = trend(gauge, rules, pump(point));
                    LocalDate today = LocalDate.ofInstant(newest.at(), zone(point));
                    return Outlook.of(rules.tank(), rules.volume(newest.value()), trend, inflow.worst(today))
                            .after(Duration.between(newest.at(), now));
                }));
    }

    /** A new reading of a level. */
    Watching.Step look(Gauge gauge, Point point, TankRules rules, Instant at) {
        var remarks = new Remarks(gauge, at);
        Optional<RunTime> pump = pump(point);
        Optional<Trend> trend = trend(gauge, rules, pump);
        double volume = rules.volume(gauge.newest().orElseThrow().value());
        overflow(remarks, point, rules, new Level(volume, trend, running(pump)));
        falling(remarks, rules, trend, pump);
        return remarks.done();
    }

    private record Level(double volume, Optional<Trend> trend, boolean pumped) {}

    private void overflow(Remarks remarks, Point point, TankRules rules, Level level) {
        LocalDate today = LocalDate.ofInstant(remarks.at(), zone(point));
        Inflow inflow = Inflow.of(remarks.noted(INFLOW));
        Outlook outlook = Outlook.of(rules.tank(), level.volume(), level.trend(), inflow.worst(today));
        Response response =
                situation.setup().site(point.site()).map(Site::response).orElse(Response.USUAL);
        boolean held = remarks.holds(OVERFLOW);
        // A pump that has just come on is about to lower the level; how fast nobody can say yet.
        boolean unknown = level.trend().isEmpty() && level.pumped();
        boolean holds = unknown ? held : outlook.tooShort(response, held);
        remarks.say(OVERFLOW, holds, numbers(rules, outlook, level, response));
        remarks.note(INFLOW, learned(inflow, level, today, holds).numbers());
    }

    private static Inflow learned(Inflow inflow, Level level, LocalDate today, boolean holds) {
        if (holds) {
            return inflow.forgotten();
        }
        if (level.trend().filter(line -> line.fastest() < 0).isPresent()) {
            return inflow.over();
        }
        return level.trend()
                .filter(line -> line.slowest() > 0 && line.over().compareTo(A_RATE) >= 0)
                .map(line -> inflow.filling(today, line.rate()))
                .orElse(inflow);
    }

    /** The height, and that above which less time is left than people need, by the rate that leaves the least. */
    private static Remarks.Numbers numbers(TankRules rules, Outlook outlook, Level level, Response response) {
        Tank tank = rules.tank();
        double stands = level.trend().map(Trend::value).orElse(level.volume());
        double hours = Math.max(1, outlook.whateverItDoes().toSeconds()) / 3600.0;
        double limit = response.workedBack(tank.capacity(), (tank.capacity() - stands) / hours);
        var numbers = Remarks.Numbers.of(tank.height(level.volume()), tank.height(limit), DECIMALS);
        return rules.head().isPresent() ? numbers.in("ft") : numbers;
    }

    private static void falling(Remarks remarks, TankRules rules, Optional<Trend> trend, Optional<RunTime> pump) {
        if (pump.flatMap(RunTime::running).isEmpty()) {
            remarks.say(FALLING, false);
            return;
        }
        double idle = -IDLE * rules.tank().capacity();
        boolean falls = trend.filter(line -> line.fastest() < idle
                        && line.over().compareTo(A_FALL) >= 0
                        && -line.rate() * line.over().toMinutes() / 60
                                > TURN * rules.tank().capacity())
                .isPresent();
        boolean stopped = trend.filter(line -> line.slowest() > idle).isPresent();
        boolean still = remarks.holds(FALLING) && !stopped;
        remarks.say(FALLING, !running(pump) && (falls || still));
    }

    /** The trend of the volume since the pump was switched or the level turned, whatever came last. */
    static Optional<Trend> trend(Gauge gauge, TankRules rules, Optional<RunTime> pump) {
        Series volumes = Curves.of(gauge, rules::volume);
        Series regime = Curves.settled(pump, SETTLE).map(volumes::from).orElse(volumes);
        return Trend.of(Turning.stretch(regime, TURN * rules.tank().capacity()));
    }

    private static boolean running(Optional<RunTime> pump) {
        return pump.flatMap(RunTime::running).orElse(false);
    }

    /** When the pump that empties this tank ran; empty when none is set up, or it was never read. */
    private Optional<RunTime> pump(Point tank) {
        return situation
                .setup()
                .pumpOf(tank.site(), tank.id())
                .map(pump -> Curves.runs(situation.gauge(new Gauge.Key(pump.site(), pump.id()))))
                .filter(runs -> runs.running().isPresent());
    }

    private java.time.ZoneId zone(Point point) {
        return situation.setup().site(point.site()).map(Site::zone).orElse(java.time.ZoneOffset.UTC);
    }
}
