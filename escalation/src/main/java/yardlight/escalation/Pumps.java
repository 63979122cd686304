package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.limit.Watching;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.runtime.Comparison;
import yardlight.escalation.runtime.Numbers;
import yardlight.escalation.runtime.PumpRules;
import yardlight.escalation.runtime.RunTime;
import yardlight.escalation.setup.Point;
import yardlight.escalation.tank.TankRules;
import yardlight.escalation.trend.Medians;
import yardlight.escalation.trend.Remembered;
import yardlight.escalation.trend.Series;
import yardlight.escalation.trend.Trend;

/** How long pumps run, and whether anything comes of it. */
final class Pumps {

    static final String LESS = "runs-less";
    static final String MORE = "runs-more";
    static final String IN_VAIN = "running-without-effect";

    private static final String EMPTYING = "emptying";
    private static final String PRESSURE = "running-pressure";
    private static final String EFFECT = "effect";

    private static final double SHOWN = 1;
    private static final double UNKNOWN = 0;
    private static final double IS_IN_VAIN = -1;

    /** A pump that came on a short while ago need not show anything yet. */
    private static final Duration SHOWS = Duration.ofMinutes(20);
    /** A fall has to be seen for so long before it is worth remembering. */
    private static final Duration A_FALL = Duration.ofMinutes(10);

    private static final Duration PRESSURE_SHOWS = Duration.ofMinutes(10);
    private static final Duration NEWEST = Duration.ofMinutes(5);
    /** A level that falls a quarter as fast as usual while the pump runs is not being pumped down. */
    private static final double QUARTER = 0.25;
    /** As long as nothing is usual: a hundredth of the tank an hour. */
    private static final double IDLE = 0.01;
    /** A pressure below six tenths of the usual one while the pump runs shows nothing of it, above eight it does. */
    private static final double NO_PRESSURE = 0.6;

    private static final double PRESSED = 0.8;

    private final Situation situation;

    Pumps(Situation situation) {
        this.situation = situation;
    }

    /** A new reading of the signal. */
    static Watching.Step look(Gauge gauge, PumpRules rules, ZoneId zone, Reading reading) {
        var remarks = new Remarks(gauge, reading.at());
        RunTime runs = Curves.runs(gauge).plus(reading.at(), rules.runs(reading.value()), zone, rules.hold());
        remarks.note(Curves.RUNS, Numbers.of(runs));
        Optional<Comparison> compared = runs.compared(zone, rules.days());
        compared.ifPresent(now -> share(remarks, rules, now));
        return remarks.done();
    }

    /** Once it is unusual it stays so until it has come half the way back. */
    private static void share(Remarks remarks, PumpRules rules, Comparison now) {
        double low = now.low(rules.unusual());
        double high = now.high(rules.unusual());
        double half = (now.usual() - low) / 2;
        boolean less = now.share() < (remarks.holds(LESS) ? now.usual() - half : low);
        boolean more = now.share() > (remarks.holds(MORE) ? now.usual() + half : high);
        remarks.say(LESS, less, percent(now.share(), low));
        remarks.say(MORE, more, percent(now.share(), high));
    }

    private static Remarks.Numbers percent(double share, double limit) {
        return Remarks.Numbers.of(share * 100, limit * 100, 0).in("%");
    }

    /**
     * A new reading of what a pump should move: the level of what it empties, or the pressure behind it. Once it runs in vain
     * that is so until it shows an effect: one that stops and starts is one alarm, not one each time.
     *
     * @param pump the pump's own point
     * @param read the point that was read
     */
    Watching.Step effect(Point pump, PumpRules rules, String read, Instant at) {
        Gauge gauge = situation.gauge(new Gauge.Key(pump.site(), pump.id()));
        var remarks = new Remarks(gauge, at);
        RunTime runs = Curves.runs(gauge);
        List<Double> before = remarks.noted(EFFECT).isEmpty() ? List.of(0.0, 0.0) : remarks.noted(EFFECT);
        if (!runs.running().orElse(false)) {
            remarks.note(EFFECT, before.stream().map(one -> Math.min(one, 0)).toList());
            return remarks.done();
        }
        double level = before.get(0);
        double pressure = before.get(1);
        if (rules.empties().equals(Optional.of(read))) {
            level = told(level(remarks, pump, read, runs), level);
        }
        if (rules.pressure().equals(Optional.of(read))) {
            pressure = told(pressure(remarks, pump, read, runs.since().orElseThrow()), pressure);
        }
        remarks.note(EFFECT, List.of(level, pressure));
        boolean vain = level < 0 || pressure < 0;
        boolean shows = level > 0 || pressure > 0;
        remarks.say(IN_VAIN, vain || remarks.holds(IN_VAIN) && !shows);
        return remarks.done();
    }

    /** What showed nothing of the pump is believed until it does show something. */
    private static double told(double now, double before) {
        return now == UNKNOWN && before < 0 ? before : now;
    }

    /** Above 0 if the level falls as it should, below if not, 0 when that cannot be said yet. */
    private double level(Remarks remarks, Point pump, String id, RunTime runs) {
        Point point = situation.setup().point(pump.site(), id);
        Gauge gauge = situation.gauge(new Gauge.Key(pump.site(), id));
        Optional<TankRules> tank = point.equipment().tank();
        Optional<Trend> trend = tank.flatMap(rules -> Tanks.trend(gauge, rules, Optional.of(runs)));
        if (trend.isEmpty()) {
            return UNKNOWN;
        }
        Trend line = trend.get();
        Remembered emptying = Remembered.of(remarks.noted(EMPTYING));
        if (line.fastest() < 0 && line.over().compareTo(A_FALL) >= 0) {
            emptying = emptying.with(runs.since().orElseThrow(), line.rate());
            remarks.note(EMPTYING, emptying.numbers());
        }
        double idle = -IDLE * tank.get().tank().capacity();
        double least = emptying.usual().isPresent() ? QUARTER * emptying.usual().getAsDouble() : idle;
        boolean vain = line.slowest() > least && line.over().compareTo(SHOWS) >= 0;
        boolean shows = line.fastest() < least;
        return shows ? SHOWN : vain ? IS_IN_VAIN : UNKNOWN;
    }

    /** The same of the usual pressure behind it. */
    private double pressure(Remarks remarks, Point pump, String id, Instant since) {
        Gauge gauge = situation.gauge(new Gauge.Key(pump.site(), id));
        Series all = Curves.of(gauge, value -> value);
        if (all.isEmpty() || all.last().at().isBefore(since.plus(PRESSURE_SHOWS))) {
            return UNKNOWN;
        }
        double now = Medians.of(all.from(all.last().at().minus(NEWEST)).samples().stream()
                .mapToDouble(one -> one.value())
                .toArray());
        Remembered before = Remembered.of(remarks.noted(PRESSURE));
        Remembered remembered = before.with(since, now);
        remarks.note(PRESSURE, remembered.numbers());
        if (remembered.usual().isEmpty()) {
            return UNKNOWN;
        }
        double usual = remembered.usual().getAsDouble();
        return now < NO_PRESSURE * usual ? IS_IN_VAIN : now > PRESSED * usual ? SHOWN : UNKNOWN;
    }
}
