package yardlight.gateway.board;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.SeenPoint;
import yardlight.db.alarm.SeenPoints;
import yardlight.escalation.BoxAlarms;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Names;

/** The points that had alarms in the last month and that nobody has set up. Looked up once a minute at most. */
@Component
class Unset {

    /** A point that wants setting up. */
    record Point(String site, String name, String point) {}

    private static final Duration MONTH = Duration.ofDays(30);

    private final LoadingCache<Duration, List<SeenPoint>> seen;

    Unset(SeenPoints points, InstantSource clock) {
        seen = Caffeine.newBuilder()
                .expireAfterWrite(Duration.ofMinutes(1))
                .build(span -> points.since(clock.instant().minus(span)));
    }

    List<Point> of(Setup setup) {
        var names = new Names(setup);
        return seen.get(MONTH).stream()
                .filter(one ->
                        !ours(one) && setup.known(one.site(), one.point()).isEmpty())
                .filter(one -> setup.site(one.site()).isPresent())
                .map(one -> new Point(one.site(), names.site(one.site()), one.point()))
                .toList();
    }

    /** The gateway's own points, which nobody has to set up. */
    private static boolean ours(SeenPoint one) {
        return one.site().equals(Site.GATEWAY) || BoxAlarms.have(one.point());
    }
}
