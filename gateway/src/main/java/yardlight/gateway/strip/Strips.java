package yardlight.gateway.strip;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;
import yardlight.db.reading.Curve;
import yardlight.db.reading.Newest;
import yardlight.db.reading.Sample;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** Makes the curves that pages show without a script. */
@Component
public class Strips {

    /** As many as there are dots along a phone. */
    private static final int MOST = 240;

    private static final Duration DAY = Duration.ofDays(1);

    /** Each looks two hundred times closer. */
    private static final int TURNS = 3;

    private static final int MOST_STRIPS = 12;

    /** A page renews itself more often than there is something new to draw. */
    private final Cache<Wanted, List<Strip>> drawn = Caffeine.newBuilder()
            .maximumSize(50)
            .expireAfterWrite(Duration.ofMinutes(1))
            .build();

    private final Past past;
    private final Troubles troubles;
    private final SetupInForce inForce;
    private final InstantSource clock;

    private record Wanted(String site, Locale locale, List<Newest> newest) {}

    Strips(Past past, Troubles troubles, SetupInForce inForce, InstantSource clock) {
        this.past = past;
        this.troubles = troubles;
        this.inForce = inForce;
        this.clock = clock;
    }

    /** The curve of a point in a stretch of time; empty when nothing was read in it. */
    public Optional<Strip> of(String site, String point, Stretch stretch, Tongue tongue) {
        Curve curve = toItsEnd(site, point, stretch, past.series(site, point, stretch.from(), stretch.to(), MOST));
        if (curve.samples().isEmpty()) {
            return Optional.empty();
        }
        Setup setup = inForce.setup();
        var names = new Names(setup);
        var clockface = new Clockface(names.zone(site), clock.instant(), tongue.locale());
        var telling = new Telling(tongue, names, clockface);
        Point known = setup.point(site, point);
        Drawn drawn = Drawn.of(
                stretch,
                curve.samples(),
                Limits.of(known, telling),
                troubles.of(site, Set.of(point), stretch, telling));
        String unit = curve.unit().or(known::unit).orElse("");
        return Optional.of(strip(drawn, new Account(known.name(), unit, curve.samples(), clockface, tongue)));
    }

    /** With the very last reading at its end, where the last ones were drawn together. */
    private Curve toItsEnd(String site, String point, Stretch stretch, Curve curve) {
        var samples = new ArrayList<>(curve.samples());
        for (int turn = 0; turn < TURNS && !samples.isEmpty(); turn++) {
            Sample last = samples.get(samples.size() - 1);
            List<Sample> rest = last.count() > 1
                    ? past.series(site, point, last.at(), stretch.to(), MOST).samples()
                    : List.of();
            if (rest.isEmpty() || !rest.get(rest.size() - 1).at().isAfter(last.at())) {
                break;
            }
            samples.add(rest.get(rest.size() - 1));
        }
        return new Curve(curve.unit(), samples);
    }

    private static Strip strip(Drawn drawn, Account account) {
        return new Strip(
                account.name(),
                account.last().orElse(""),
                account.sentence(),
                drawn.lines(),
                drawn.bands(),
                drawn.figures(),
                drawn.times(account.clock()),
                drawn.edges(),
                drawn.bars(),
                account.rows());
    }

    /** The last day of every point of a site of which there are readings, by the order in which they are set up. */
    public List<Strip> lastDay(String site, Tongue tongue) {
        List<Newest> newest = past.newest(site);
        return drawn.get(new Wanted(site, tongue.locale(), newest), wanted -> {
            Instant now = clock.instant();
            var stretch = new Stretch(now.minus(DAY), now);
            return newest.stream()
                    .map(Newest::point)
                    .sorted(Comparator.comparing(setOf(site)::indexOf))
                    .limit(MOST_STRIPS)
                    .flatMap(point -> of(site, point, stretch, tongue).stream())
                    .toList();
        });
    }

    private List<String> setOf(String site) {
        return inForce.setup().points().stream()
                .filter(point -> point.site().equals(site))
                .map(Point::id)
                .toList();
    }
}
