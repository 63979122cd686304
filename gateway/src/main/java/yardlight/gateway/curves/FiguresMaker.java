package yardlight.gateway.curves;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;
import yardlight.db.reading.Curve;
import yardlight.db.reading.Sample;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.strip.Limits;
import yardlight.gateway.strip.Past;
import yardlight.gateway.strip.Rounded;
import yardlight.gateway.strip.Runs;
import yardlight.gateway.strip.Stretch;
import yardlight.gateway.strip.Troubles;

/** Makes the figures of curves: no more for a year than for an hour. */
@Component
class FiguresMaker {

    /** As many as there are dots across a wide screen. */
    static final int MOST = 800;

    private static final int[] DAYS_BEFORE = {1, 7};

    private final Past past;
    private final Troubles troubles;
    private final SetupInForce inForce;
    private final InstantSource clock;

    FiguresMaker(Past past, Troubles troubles, SetupInForce inForce, InstantSource clock) {
        this.past = past;
        this.troubles = troubles;
        this.inForce = inForce;
        this.clock = clock;
    }

    /**
     * @param beside whether the day before and the week before come too, moved to lie over it
     * @throws Problem 404 when there is no such site
     */
    Figures of(String site, List<String> points, Stretch stretch, boolean beside, Tongue tongue) {
        Setup setup = inForce.setup();
        ZoneId zone = setup.site(site).map(Site::zone).orElseThrow(() -> Problem.notFound("there is no such site"));
        var names = new Names(setup);
        var telling = new Telling(tongue, names, new Clockface(zone, clock.instant(), tongue.locale()));
        var lines = new ArrayList<Figures.Line>();
        var limits = new ArrayList<Figures.Edge>();
        for (String id : points) {
            Point point = setup.point(site, id);
            lines.add(line(point, stretch, 0, point.name(), zone));
            if (beside) {
                IntStream.of(DAYS_BEFORE)
                        .mapToObj(days ->
                                line(point, stretch, days, tongue.say("curves.before." + days, point.name()), zone))
                        .forEach(lines::add);
            }
            Limits.of(point, telling)
                    .forEach(limit -> limits.add(new Figures.Edge(id, limit.words(), limit.value(), limit.above())));
        }
        List<Figures.Alarm> alarms = troubles.of(site, points, stretch, telling).stream()
                .map(one -> new Figures.Alarm(
                        one.point(),
                        one.from().getEpochSecond(),
                        one.to().getEpochSecond(),
                        one.words(),
                        "/alarms/" + one.id()))
                .toList();
        return new Figures(stretch.from().getEpochSecond(), stretch.to().getEpochSecond(), lines, limits, alarms);
    }

    private Figures.Line line(Point point, Stretch stretch, int back, String name, ZoneId zone) {
        Curve curve = past.series(
                point.site(), point.id(), moved(stretch.from(), -back, zone), moved(stretch.to(), -back, zone), MOST);
        boolean wide = curve.samples().stream().anyMatch(sample -> sample.max() > sample.min());
        var at = new ArrayList<Long>();
        var mean = new ArrayList<BigDecimal>();
        var low = new ArrayList<BigDecimal>();
        var high = new ArrayList<BigDecimal>();
        long last = Long.MIN_VALUE;
        for (List<Sample> run : Runs.of(curve.samples())) {
            if (last != Long.MIN_VALUE) {
                at.add(++last);
                List.of(mean, low, high).forEach(figures -> figures.add(null));
            }
            for (Sample sample : run) {
                long second = moved(sample.at(), back, zone).getEpochSecond();
                // On the night in which a clock is put back, an hour of the other day lies there twice.
                if (second > last) {
                    at.add(second);
                    mean.add(Rounded.number(sample.mean()));
                    low.add(Rounded.number(sample.min()));
                    high.add(Rounded.number(sample.max()));
                    last = second;
                }
            }
        }
        String unit = curve.unit().or(point::unit).orElse("");
        return new Figures.Line(
                point.id(), name, unit, back, at, mean, wide ? low : List.of(), wide ? high : List.of());
    }

    /** By so many days of the local clock: three in the afternoon stays three in the afternoon. */
    private static Instant moved(Instant at, int days, ZoneId zone) {
        return days == 0 ? at : at.atZone(zone).plusDays(days).toInstant();
    }
}
