package yardlight.gateway.measure;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.reading.Curve;
import yardlight.db.reading.Newest;
import yardlight.db.reading.Readings;
import yardlight.db.reading.Sample;
import yardlight.escalation.setup.Point;
import yardlight.gateway.setup.SetupInForce;

/** What was measured, in the units that the setup has now, whatever it was stored in. */
@Component
public class Archive {

    private final Readings readings;
    private final SetupInForce inForce;

    Archive(Readings readings, SetupInForce inForce) {
        this.readings = readings;
        this.inForce = inForce;
    }

    /**
     * As {@link Readings#series}.
     *
     * @param from inclusive
     * @param to exclusive
     * @param most samples, at least 1
     */
    public Curve series(String site, String point, Instant from, Instant to, int most) {
        Curve stored = readings.series(site, point, from, to, most);
        Optional<String> unit = unit(site, point, stored.unit());
        if (unit.equals(stored.unit()) || stored.unit().isEmpty()) {
            return new Curve(unit, stored.samples());
        }
        String in = stored.unit().get();
        String as = unit.orElseThrow();
        List<Sample> samples = stored.samples().stream()
                .map(one -> new Sample(
                        one.at(),
                        Units.convert(one.min(), in, as),
                        Units.convert(one.max(), in, as),
                        Units.convert(one.mean(), in, as),
                        one.count()))
                .toList();
        return new Curve(unit, samples);
    }

    /** The newest reading of each point of a site that has any. */
    public List<Newest> newest(String site) {
        return readings.newest(site).stream().map(one -> newest(site, one)).toList();
    }

    private Newest newest(String site, Newest stored) {
        Optional<String> unit = unit(site, stored.point(), stored.unit());
        double value = stored.unit().isEmpty() || unit.isEmpty()
                ? stored.value()
                : Units.convert(stored.value(), stored.unit().get(), unit.get());
        return new Newest(stored.point(), unit, stored.at(), value);
    }

    /** The point's own, unless what is stored cannot be said in it. */
    private Optional<String> unit(String site, String point, Optional<String> stored) {
        return inForce.setup()
                .known(site, point)
                .flatMap(Point::unit)
                .filter(own -> stored.isEmpty() || Units.fit(stored.get(), own))
                .or(() -> stored);
    }
}
